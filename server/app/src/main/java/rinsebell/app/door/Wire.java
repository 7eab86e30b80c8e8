package rinsebell.app.door;

import java.io.IOException;
import java.time.Duration;
import org.eclipse.jetty.http2.ErrorCode;
import org.eclipse.jetty.http2.HTTP2Connection;
import org.eclipse.jetty.http2.HTTP2Stream;
import org.eclipse.jetty.http2.frames.ResetFrame;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.Callback;

/** What one request and its answer go over. */
public interface Wire {

    /** The wire of a request: a whole connection, or with HTTP/2 one stream among the others of a connection. */
    static Wire of(Request request) {
        var connection = request.getConnectionMetaData().getConnection();
        return connection instanceof HTTP2Connection shared
                ? stream(shared, request)
                : new OfConnection(connection.getEndPoint());
    }

    /** Whoever asked may have taken it back before anybody looked at it. */
    private static Wire stream(HTTP2Connection shared, Request request) {
        HTTP2Stream stream = shared.getSession().getStream(Integer.parseInt(request.getId()));
        return stream == null ? new Gone() : new OfStream(stream);
    }

    /** Whether other requests of the same browser go over the same connection. */
    boolean isShared();

    /** Ends it at once, and with it a write that waits for a reader who never reads; nothing else is hurt. */
    void cutOff();

    /** Whether the other side has hung up. Only for a wire on which it has nothing more to say. */
    boolean isGone();

    /** How long nothing may happen on it. */
    Duration patience();

    void setPatience(Duration patience);

    /** A connection of HTTP/1.1, which carries one request at a time. */
    record OfConnection(EndPoint end) implements Wire {
        @Override
        public boolean isShared() {
            return false;
        }

        @Override
        public void cutOff() {
            end.close();
        }

        @Override
        public boolean isGone() {
            try {
                return end.fill(BufferUtil.allocate(1)) < 0;
            } catch (IOException broken) {
                return true;
            }
        }

        @Override
        public Duration patience() {
            return Duration.ofMillis(end.getIdleTimeout());
        }

        @Override
        public void setPatience(Duration patience) {
            end.setIdleTimeout(patience.toMillis());
        }
    }

    /** A stream of HTTP/2 that is over. */
    record Gone() implements Wire {
        @Override
        public boolean isShared() {
            return true;
        }

        @Override
        public void cutOff() {
            // It is.
        }

        @Override
        public boolean isGone() {
            return true;
        }

        @Override
        public Duration patience() {
            return Duration.ZERO;
        }

        @Override
        public void setPatience(Duration patience) {
            // Nobody waits for anything on it.
        }
    }

    /** A stream of HTTP/2 (RFC 9113, section 5); it is ended by RST_STREAM (section 6.4). */
    record OfStream(HTTP2Stream stream) implements Wire {
        @Override
        public boolean isShared() {
            return true;
        }

        @Override
        public void cutOff() {
            stream.reset(new ResetFrame(stream.getId(), ErrorCode.CANCEL_STREAM_ERROR.code), Callback.NOOP);
        }

        @Override
        public boolean isGone() {
            return stream.isResetOrFailed();
        }

        @Override
        public Duration patience() {
            return Duration.ofMillis(stream.getIdleTimeout());
        }

        @Override
        public void setPatience(Duration patience) {
            stream.setIdleTimeout(patience.toMillis());
        }
    }
}
