package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A wire between a browser and the program: it can be cut and mended, and the program at its end may be another one then. */
final class Wire implements AutoCloseable {
    private final Set<Socket> ends = ConcurrentHashMap.newKeySet();
    private final int port;
    private volatile int program;
    private ServerSocket here;
    private Thread door;

    /**
     * A wire that leads to a program.
     *
     * @param program the port at which it listens on this machine
     */
    Wire(int program) {
        this.program = program;
        this.here = listen(0);
        this.port = here.getLocalPort();
        this.door = opened();
    }

    private ServerSocket listen(int at) {
        try {
            ServerSocket open = new ServerSocket();
            open.setReuseAddress(true);
            open.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), at));
            return open;
        } catch (IOException taken) {
            throw new UncheckedIOException(taken);
        }
    }

    private Thread opened() {
        ServerSocket open = here;
        return thread(() -> accept(open));
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "wire");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    String url(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    private void accept(ServerSocket open) {
        while (!open.isClosed()) {
            try {
                Socket near = open.accept();
                ends.add(near);
                Socket far = new Socket(InetAddress.getLoopbackAddress(), program);
                ends.add(far);
                thread(() -> carry(near, far));
                thread(() -> carry(far, near));
            } catch (IOException cut) {
                closeEnds();
            }
        }
    }

    private void carry(Socket from, Socket to) {
        try (from;
                to;
                InputStream in = from.getInputStream()) {
            in.transferTo(to.getOutputStream());
        } catch (IOException cut) {
            // whoever asked hears of it as of any cut wire
        } finally {
            ends.remove(from);
            ends.remove(to);
        }
    }

    private void closeEnds() {
        for (Socket end : ends) {
            try {
                end.close();
            } catch (IOException gone) {
                // it is closed then
            }
        }
        ends.clear();
    }

    /** Nothing goes through from now on, not even what is under way. */
    void cut() {
        try {
            here.close();
            // only then is its port free again
            door.join();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        closeEnds();
    }

    /** It leads again, after it was cut, to the program that listens at that port. */
    void mend(int now) {
        leadsTo(now);
        here = listen(port);
        door = opened();
    }

    /** It leads to the program that listens at that port from now on. */
    void leadsTo(int now) {
        program = now;
    }

    @Override
    public void close() {
        cut();
    }
}
