package shimwright.bench.web.pair;

import jakarta.servlet.http.HttpServletRequest;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;

/**
 * Who asks: this machine itself, or a device that was paired.
 *
 * @param role what may be done
 * @param device its name; empty for this machine
 * @param id of the device; empty for this machine
 * @param person whose device it is; empty where several use it
 */
public record Asker(Role role, String device, String id, String person) {
    private static final String KEY = "shimwright.asker";

    /** Whoever sits at the machine on which the program runs. */
    public static final Asker HERE = new Asker(Role.OWNER, "", "", "");

    /** Remembers who asks beside the request. */
    public void on(Request request) {
        request.setAttribute(KEY, this);
    }

    /** Who asks; null for one who has not been let in. */
    public static @Nullable Asker of(Request request) {
        return request.getAttribute(KEY) instanceof Asker asker ? asker : null;
    }

    /** Who asks; null for one who has not been let in. */
    public static @Nullable Asker of(HttpServletRequest request) {
        return request.getAttribute(KEY) instanceof Asker asker ? asker : null;
    }

    /** How an entry is signed: the person, and the device where it is not this machine. */
    public String signs(String typed) {
        String name = person.isEmpty() ? typed : person;
        return device.isEmpty() ? name : name + " (" + device + ")";
    }
}
