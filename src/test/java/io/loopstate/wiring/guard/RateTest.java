package io.loopstate.wiring.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RateTest {
    /** SHA-256 of "abc", FIPS 180-4, example of the standard. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    Path folder;

    @Test
    void bucketHoldsARequestPerMinuteEach() {
        Rate rate = new Rate(3);
        for (int left = 2; left >= 0; left--) {
            Rate.Turn turn = rate.take();
            assertThat(turn.allowed()).isTrue();
            assertThat(turn.left()).isEqualTo(left);
        }
        Rate.Turn refused = rate.take();
        assertThat(refused.allowed()).isFalse();
        assertThat(refused.secondsToNext()).isBetween(1L, 20L);
        assertThat(refused.secondsToFull()).isBetween(50L, 60L);
    }

    @Test
    void fileOfKeysIsRead() throws IOException {
        Path file = Files.writeString(
                folder.resolve("keys"), "# keys\n\ncollege " + ABC + "\nother " + "0".repeat(64) + " 7\n");
        KeyRing ring = new KeyRing(settings(file));
        assertThat(ring.find("abc").orElseThrow().requestsPerMinute()).isEqualTo(600);
        assertThat(ring.find("abd")).isEmpty();
        assertThat(ring.find("")).isEmpty();
    }

    @Test
    void fileThatIsWrongIsRefusedWithoutItsHashes() throws IOException {
        for (String line : new String[] {"college", "college abc", "college " + ABC + " 0", "a " + ABC + " 1 2"}) {
            Path file = Files.writeString(folder.resolve("keys"), line);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new KeyRing(settings(file)))
                    .satisfies(e -> assertThat(e.getMessage()).doesNotContain(ABC));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> new KeyRing(settings(folder.resolve("missing"))));
    }

    private static AccessSettings settings(Path file) {
        return new AccessSettings() {
            @Override
            public boolean bearer() {
                return false;
            }

            @Override
            public Map<String, Key> keys() {
                return Map.of();
            }

            @Override
            public Optional<Path> keysFile() {
                return Optional.of(file);
            }

            @Override
            public Optional<Boolean> anonymous() {
                return Optional.empty();
            }

            @Override
            public int requestsPerMinute() {
                return 600;
            }
        };
    }
}
