package rinsebell.app.press;

import java.net.http.HttpResponse;
import org.jspecify.annotations.Nullable;

/** What a press that a {@link Sender} sent was answered. */
record Reply(HttpResponse<String> answer) {
    int statusCode() {
        return answer.statusCode();
    }

    String asString() {
        return answer.body();
    }

    @Nullable
    String contentType() {
        return header("Content-Type");
    }

    @Nullable
    String header(String name) {
        return answer.headers().firstValue(name).orElse(null);
    }
}
