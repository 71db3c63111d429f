package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.Http;
import io.loopstate.testing.StoredText;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The commands of the README work as they stand and get the replies stored; {@code -Dexamples.bless=true} stores them anew.
 */
@QuarkusTest
class ReadmeTest {
    private static final Path REPLIES = Path.of("src", "test", "resources", "readme");
    private static final String OF_THIS_BUILD = "/v1/version";
    private static final Pattern COMMAND =
            Pattern.compile("^curl -s (.*?)(?=^curl |^#|^```)", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern GET = Pattern.compile("\"?http://localhost:8080(/[^\"\\s]*)\"?");
    private static final Pattern POST = Pattern.compile(
            "\"?http://localhost:8080(/[^\"\\s]+)\"? -H 'Content-Type: ([a-z/-]+)' (?:-d|--data-binary) '(.*)'",
            Pattern.DOTALL);

    /** A command of the README: a body makes it a POST. */
    record Command(String target, String type, String body) {}

    static Stream<Command> commands() throws IOException {
        List<Command> commands = new ArrayList<>();
        Matcher matcher = COMMAND.matcher(Files.readString(Path.of("README.md")));
        while (matcher.find()) {
            commands.add(command(matcher.group(1).strip()));
        }
        return commands.stream();
    }

    /** A command and the file of its reply: its path, and which of that path's commands it is. */
    record Stored(Command command, Path file) {
        @Override
        public String toString() {
            return file.getFileName().toString();
        }
    }

    static Stream<Stored> stored() throws IOException {
        Map<String, Integer> counts = new HashMap<>();
        return commands().map(command -> {
            String path = command.target().split("\\?")[0].substring(1).replace('/', '-');
            return new Stored(command, REPLIES.resolve(path + '-' + counts.merge(path, 1, Integer::sum) + ".txt"));
        });
    }

    private static Command command(String arguments) {
        Matcher post = POST.matcher(arguments);
        if (post.matches()) {
            return new Command(post.group(1), post.group(2), post.group(3));
        }
        Matcher get = GET.matcher(arguments);
        assertThat(get.matches()).as(arguments).isTrue();
        return new Command(get.group(1), null, null);
    }

    @ParameterizedTest
    @MethodSource("stored")
    void commandGetsTheStoredReply(Stored stored) throws IOException {
        Command command = stored.command();
        ValidatableResponse reply = command.body() == null
                ? Http.get(command.target())
                : Http.post(command.target(), command.type(), command.body());
        String text = reply.statusCode(200).extract().asString();
        if (command.target().startsWith(OF_THIS_BUILD)) {
            assertThat(text).isNotEmpty();
        } else {
            StoredText.check(stored.file(), text);
        }
    }

    @Test
    void nothingElseIsStored() throws IOException {
        List<Path> known = stored().map(Stored::file).toList();
        try (Stream<Path> files = Files.list(REPLIES)) {
            assertThat(files).isSubsetOf(known);
        }
    }

    @Test
    void everyOperationIsShown() throws IOException {
        List<String> shown = commands()
                .map(command -> (command.body() == null ? "get " : "post ")
                        + command.target().split("\\?")[0])
                .map(shownPath -> shownPath.replaceFirst("refrigerants/.*", "refrigerants/{designation}"))
                .toList();
        assertThat(ContractTest.operations().map(call -> call.method() + ' ' + call.path()))
                .allSatisfy(operation -> assertThat(shown).contains(operation));
    }
}
