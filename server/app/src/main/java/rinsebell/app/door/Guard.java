package rinsebell.app.door;

import io.javalin.http.Context;
import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.nio.channels.SelectableChannel;
import java.nio.channels.SocketChannel;
import java.util.HexFormat;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.EofException;
import org.eclipse.jetty.io.SelectorManager;
import org.eclipse.jetty.io.ssl.SslConnection;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.component.ContainerLifeCycle;
import org.eclipse.jetty.util.component.LifeCycle;
import org.jspecify.annotations.Nullable;
import rinsebell.app.time.MachineTime;

/**
 * Stands before the door and tells a salon's own devices from strangers, before anything is read or a thread can be held.
 * Devices, and whoever is on the machine itself, go past; strangers share what {@link CrowdLimits} leaves them.
 */
final class Guard extends Handler.Wrapper implements Connection.Listener, SelectorManager.AcceptListener {
    private static final String KNOWN = "rinsebell.known";

    /** Of an IPv6 address this much tells one house from another; the rest a machine chooses by itself (RFC 4291, 2.5.1). */
    private static final int NETWORK_BYTES = 8;

    private final Predicate<Request> devices;
    private final ProtocolProblems problems;
    private final Lobby<EndPoint> lobby;
    private final Crowd crowd;

    /** @param devices whether a request comes from a device that is in */
    Guard(Predicate<Request> devices, ProtocolProblems problems, CrowdLimits limits) {
        this.devices = devices;
        this.problems = problems;
        this.lobby = new Lobby<>(limits.connections());
        this.crowd = new Crowd(limits, new MachineTime()::monotonicNanos);
    }

    /** Every request of that server passes here, and every connection of the ports that it has when it starts. */
    void standBefore(Server server) {
        server.setHandler(this);
        server.addEventListener(new LifeCycle.Listener() {
            @Override
            public void lifeCycleStarting(LifeCycle starting) {
                Stream.of(server.getConnectors()).forEach(Guard.this::watch);
            }
        });
    }

    /** Counts who connects to a port that is not open yet. */
    void watch(Connector port) {
        ((ContainerLifeCycle) port).addBean(this, false);
    }

    /** Whether whoever sent this is no stranger. */
    static boolean knows(Context ctx) {
        return ctx.attribute(KNOWN) != null;
    }

    /** Before anything is made for it: whoever has spent all costs no handshake any more. */
    @Override
    public void onAccepting(SelectableChannel channel) {
        try {
            if (channel instanceof SocketChannel socket
                    && !isFromHere(socket.getRemoteAddress(), socket.getLocalAddress())
                    && !crowd.pays(address(socket.getRemoteAddress()), Crowd.CONNECTION)) {
                socket.close();
            }
        } catch (IOException gone) {
            // Whoever has hung up already costs nothing.
        }
    }

    @Override
    public void onOpened(Connection connection) {
        EndPoint end = connection.getEndPoint();
        if (end instanceof SslConnection.SslEndPoint || isFromHere(end)) {
            return; // What is inside a connection of TLS is not counted a second time.
        }
        lobby.take(end, address(end.getRemoteSocketAddress())).ifPresent(EndPoint::close);
    }

    @Override
    public void onClosed(Connection connection) {
        lobby.leave(connection.getEndPoint());
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        EndPoint end = wholeConnection(request);
        if (isFromHere(end) || devices.test(request)) {
            welcome(request, end);
            return super.handle(request, response, callback);
        }
        String from = address(end.getRemoteSocketAddress());
        if (!crowd.pays(from, Crowd.REQUEST)) {
            end.close();
            callback.failed(new EofException("asks for too much"));
            return true;
        }
        if (!crowd.enters(from)) {
            return problems.answer(Problem.of(ProblemCode.CROWDED), request, response, callback);
        }
        Request.addCompletionListener(request, over -> crowd.leaves(from));
        return super.handle(request, response, callback);
    }

    private void welcome(Request request, EndPoint end) {
        request.setAttribute(KNOWN, true);
        if (lobby.leave(end)) {
            crowd.refund(address(end.getRemoteSocketAddress()), Crowd.CONNECTION);
        }
    }

    private static EndPoint wholeConnection(Request request) {
        EndPoint end = request.getConnectionMetaData().getConnection().getEndPoint();
        return end instanceof SslConnection.SslEndPoint inside
                ? inside.getSslConnection().getEndPoint()
                : end;
    }

    private static boolean isFromHere(EndPoint end) {
        return isFromHere(end.getRemoteSocketAddress(), end.getLocalSocketAddress());
    }

    /** Nobody else can come from the very address at which this machine is asked. */
    private static boolean isFromHere(@Nullable SocketAddress from, @Nullable SocketAddress to) {
        return from instanceof InetSocketAddress remote
                && to instanceof InetSocketAddress local
                && remote.getAddress().equals(local.getAddress());
    }

    private static String address(@Nullable SocketAddress from) {
        if (!(from instanceof InetSocketAddress remote)) {
            return "";
        }
        InetAddress address = remote.getAddress();
        return address instanceof Inet6Address
                ? HexFormat.of().formatHex(address.getAddress(), 0, NETWORK_BYTES)
                : address.getHostAddress();
    }
}
