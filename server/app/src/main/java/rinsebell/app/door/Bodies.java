package rinsebell.app.door;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.server.Request;
import rinsebell.app.time.MachineTime;

/** Reads the body of a POST once, at the door, and lets in neither more nor other than a form can be. */
public final class Bodies {

    /** The most bytes of one body: a form with every field full is far below. */
    static final int LIMIT = 64 * 1024;

    /**
     * How much of a larger body is read and forgotten. A client that is still sending when we answer and close sees a
     * broken connection instead of the answer, so what is only somewhat too large is heard to its end.
     */
    private static final int PATIENCE = 4 * 1024 * 1024;

    /** Every request has one of these, and hardly any fills it. */
    private static final int CHUNK = 4 * 1024;

    /** A press is one packet or two; longer takes only what is meant to keep a thread busy. */
    private static final Duration LONGEST = Duration.ofSeconds(5);

    private static final MachineTime MACHINE = new MachineTime();

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String JSON = "application/json";
    private static final String KEPT = "rinsebell.body";
    private static final String WIRE = "rinsebell.wire";

    /**
     * How many bodies may be waited for at once. A press comes whole with its head; whoever sends one bit by bit holds a
     * thread meanwhile, and many of them would hold all.
     */
    private static final Semaphore AWAITED = new Semaphore(32);

    /** Apart from those of devices, so that no stranger's crumbs make a press wait. */
    private static final Semaphore AWAITED_FROM_STRANGERS = new Semaphore(16);

    private Bodies() {}

    /** Lets the body be read with the patience that is due here rather than with that of a connection at rest. */
    static Request knowingItsWire(Request request) {
        request.setAttribute(WIRE, Wire.of(request));
        return request;
    }

    /** The body that came in through the door; empty when there was none. */
    public static byte[] of(Context ctx) {
        return Objects.requireNonNullElse(ctx.<byte[]>attribute(KEPT), new byte[0]);
    }

    static void check(Context ctx) {
        byte[] body = arrived(ctx);
        if (body.length > 0 && !readable(ctx)) {
            throw Problem.of(ProblemCode.UNKNOWN_TYPE).thrown();
        }
        ctx.attribute(KEPT, body);
    }

    /** Somebody may walk out of reach of the network in the middle of it: that is no bug. */
    private static byte[] arrived(Context ctx) {
        try {
            InputStream in = ctx.req().getInputStream();
            return isHere(ctx, in) ? read(in) : awaited(ctx, in);
        } catch (IOException | HttpException.RuntimeException e) {
            throw Problem.of(ProblemCode.TOO_SLOW).thrown();
        }
    }

    private static boolean isHere(Context ctx, InputStream in) throws IOException {
        int length = ctx.req().getContentLength();
        return length >= 0 ? in.available() >= length : ctx.header("Transfer-Encoding") == null;
    }

    private static byte[] awaited(Context ctx, InputStream in) throws IOException {
        Semaphore awaited = Guard.knows(ctx) ? AWAITED : AWAITED_FROM_STRANGERS;
        if (!awaited.tryAcquire()) {
            throw Problem.of(ProblemCode.TOO_SLOW).thrown();
        }
        Wire wire = Objects.requireNonNull(ctx.attribute(WIRE), "every request knows its wire");
        Duration atRest = wire.patience();
        wire.setPatience(LONGEST);
        try {
            return read(in);
        } finally {
            wire.setPatience(atRest);
            awaited.release();
        }
    }

    private static byte[] read(InputStream in) throws IOException {
        byte[] body = soon(in);
        if (body.length > LIMIT) {
            forget(in);
            throw Problem.of(ProblemCode.TOO_LARGE).thrown();
        }
        return body;
    }

    /** A rate would cut off the few bytes of a press that a busy machine reads in two parts; a total does not. */
    private static byte[] soon(InputStream in) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        byte[] chunk = new byte[CHUNK];
        long begun = MACHINE.monotonicNanos();
        int read = in.read(chunk);
        while (read >= 0 && body.size() <= LIMIT) {
            body.write(chunk, 0, read);
            if (MACHINE.monotonicNanos() - begun > LONGEST.toNanos()) {
                throw Problem.of(ProblemCode.TOO_SLOW).thrown();
            }
            read = in.read(chunk);
        }
        return body.toByteArray();
    }

    private static void forget(InputStream in) throws IOException {
        byte[] chunk = new byte[CHUNK];
        int left = PATIENCE;
        for (int read = in.read(chunk); read >= 0 && left > 0; read = in.read(chunk)) {
            left -= read;
        }
    }

    /** A form for pages, JSON for the API; in UTF-8, said or not. */
    private static boolean readable(Context ctx) {
        return is(ctx, ProblemText.forPrograms(ctx.path()) ? JSON : FORM);
    }

    static boolean isJson(Context ctx) {
        return is(ctx, JSON);
    }

    private static boolean is(Context ctx, String wanted) {
        String type = Objects.requireNonNullElse(ctx.contentType(), "").toLowerCase(Locale.ROOT);
        return type.equals(wanted) || type.replace(" ", "").equals(wanted + ";charset=utf-8");
    }
}
