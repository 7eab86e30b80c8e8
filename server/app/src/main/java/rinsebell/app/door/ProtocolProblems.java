package rinsebell.app.door;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers requests that are too broken to reach any route, in the same words as all others. */
final class ProtocolProblems extends ErrorHandler {

    private final ProblemText text;

    ProtocolProblems(ProblemText text) {
        this.text = text;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        return answer(Problem.of(ProblemCode.ofStatus(response.getStatus())), request, response, callback);
    }

    /** Holds no thread while it is sent. */
    boolean answer(Problem problem, Request request, Response response, Callback callback) {
        String path = Request.getPathInContext(request);
        response.setStatus(problem.code().status());
        problem.code()
                .retryAfterSeconds()
                .ifPresent(seconds -> response.getHeaders().put("Retry-After", seconds));
        SecureHeaders.putOn(response.getHeaders());
        response.getHeaders().put("Content-Type", ProblemText.typeFor(path));
        byte[] body = text.write(problem, path).getBytes(StandardCharsets.UTF_8);
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }
}
