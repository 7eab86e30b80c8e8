package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LobbyTest {
    private final Lobby<String> lobby = new Lobby<>(4);

    @Test
    void theOldestOfWhoeverHasMostGivesWay() {
        lobby.take("b1", "b");
        lobby.take("a1", "a");
        lobby.take("a2", "a");
        lobby.take("a3", "a");
        assertThat(lobby.take("c1", "c")).contains("a1");
        assertThat(lobby.take("a4", "a")).contains("a2");
        assertThat(lobby.size()).isEqualTo(4);
    }

    @Test
    void whoeverIsKnownIsCountedNoMore() {
        lobby.take("b1", "b");
        assertThat(lobby.leave("b1")).isTrue();
        assertThat(lobby.leave("b1")).isFalse();
        for (int i = 0; i < 4; i++) {
            assertThat(lobby.take("a" + i, "a")).isEmpty();
        }
        assertThat(lobby.take("b2", "b")).contains("a0");
    }
}
