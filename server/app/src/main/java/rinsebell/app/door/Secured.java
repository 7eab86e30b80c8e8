package rinsebell.app.door;

import org.eclipse.jetty.alpn.server.ALPNServerConnectionFactory;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.http2.WindowRateControl;
import org.eclipse.jetty.http2.server.HTTP2ServerConnectionFactory;
import org.eclipse.jetty.http2.server.internal.HTTP2ServerConnection;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;

/** The way in over TLS: HTTP/2 for whoever knows it (RFC 9113, by ALPN, RFC 7301), HTTP/1.1 for others. */
final class Secured {

    /** The pages of one browser, each with its stream and its files; the same number is common practice. */
    private static final int STREAMS = 128;

    /** Pings, settings, resets and empty frames; an honest browser sends a few (RFC 9113, section 10.5). */
    private static final int ODD_FRAMES_A_SECOND = 128;

    private Secured() {}

    static ServerConnector connector(Server server, HttpConfiguration plain, Shown shown) {
        HttpConfiguration http = new HttpConfiguration(plain);
        // The door looks at Host by itself, and a name that the certificate lacks is the browser's to complain of.
        http.addCustomizer(new SecureRequestCustomizer(false));
        HttpConnectionFactory one = new HttpConnectionFactory(http);
        HTTP2ServerConnectionFactory two = new Http2(http);
        two.setMaxConcurrentStreams(STREAMS);
        two.setRateControlFactory(new WindowRateControl.Factory(ODD_FRAMES_A_SECOND));
        ALPNServerConnectionFactory chosen = new ALPNServerConnectionFactory();
        chosen.setDefaultProtocol(HttpVersion.HTTP_1_1.asString());
        SslConnectionFactory tls = new SslConnectionFactory(shown.context(), chosen.getProtocol());
        return new ServerConnector(server, tls, chosen, two, one);
    }

    /** Whoever still writes to a stream that was cut off must not find the answer to a later request in its place. */
    private static final class Http2 extends HTTP2ServerConnectionFactory {

        Http2(HttpConfiguration http) {
            super(http);
        }

        @Override
        public Connection newConnection(Connector connector, EndPoint end) {
            Connection connection = super.newConnection(connector, end);
            ((HTTP2ServerConnection) connection).setRecycleHttpChannels(false);
            return connection;
        }
    }
}
