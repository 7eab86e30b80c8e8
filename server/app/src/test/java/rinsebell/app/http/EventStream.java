package rinsebell.app.http;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads event streams by the rules of WHATWG HTML, section 9.2.6 "Interpreting an event stream". Written apart from the
 * code that makes them, so that both can't share a mistake.
 */
public final class EventStream {

    private final StringBuilder line = new StringBuilder();
    private final StringBuilder data = new StringBuilder();
    private final List<Event> events = new ArrayList<>();
    private String type = "";
    private String lastId = "";
    private boolean lastWasReturn;

    /** One event as a page would see it. */
    public record Event(String type, String id, String data) {}

    /** Takes the next characters. */
    public void read(String text) {
        text.chars().forEach(c -> read((char) c));
    }

    /** The events so far. */
    public List<Event> events() {
        return List.copyOf(events);
    }

    private void read(char c) {
        boolean secondOfPair = c == '\n' && lastWasReturn;
        lastWasReturn = c == '\r';
        if (secondOfPair) {
            return;
        }
        if (c == '\n' || c == '\r') {
            endLine(line.toString());
            line.setLength(0);
        } else {
            line.append(c);
        }
    }

    private void endLine(String text) {
        if (text.isEmpty()) {
            dispatch();
        } else if (!text.startsWith(":")) {
            int colon = text.indexOf(':');
            String field = colon < 0 ? text : text.substring(0, colon);
            String value = colon < 0 ? "" : text.substring(colon + 1);
            field(field, value.startsWith(" ") ? value.substring(1) : value);
        }
    }

    private void field(String name, String value) {
        switch (name) {
            case "event" -> type = value;
            case "data" -> data.append(value).append('\n');
            case "id" -> lastId = value.indexOf('\0') >= 0 ? lastId : value;
            default -> {
                // Unknown fields and the time to wait before trying again make no event.
            }
        }
    }

    private void dispatch() {
        if (data.length() > 0) {
            data.setLength(data.length() - 1);
            events.add(new Event(type.isEmpty() ? "message" : type, lastId, data.toString()));
        }
        data.setLength(0);
        type = "";
    }
}
