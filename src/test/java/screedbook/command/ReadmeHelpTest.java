package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import screedbook.Handbook;

/** The commands in the README are what the program says of itself. */
class ReadmeHelpTest {
    @Test
    void theCommandsAndExitCodesAreThoseOfTheHelp() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();

        assertThat(Commands.run(new String[] {"--help"}, out, out, Clock.systemUTC()))
                .isZero();
        Handbook.README.says("help", Handbook.block(out.toString(UTF_8)));
    }
}
