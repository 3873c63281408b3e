package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of the README compiles against nothing but this library, runs, and gives an answer. */
class ReadmeTest {
    private static final Path README = Path.of(System.getProperty("shimwright.root", ".."), "mechanics", "README.md");
    private static final Pattern CODE = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

    @Test
    void theExampleCompilesAndAnswers(@TempDir Path folder) throws Exception {
        String code = code();
        assertThat(code.substring(code.indexOf("class")).lines().count()).isLessThanOrEqualTo(10);
        Path source = folder.resolve("Example.java");
        Files.writeString(source, code);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int result = ToolProvider.getSystemJavaCompiler()
                .run(null, said, said, "-Xlint:all", "-proc:none", "-d", folder.toString(), source.toString());
        assertThat(result).as(said.toString(StandardCharsets.UTF_8)).isZero();
        assertThat(ran(folder)).contains("0.119", "±", "Working");
    }

    private static String code() throws IOException {
        Matcher matcher = CODE.matcher(Files.readString(README));
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    private static String ran(Path folder) throws Exception {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, ReadmeTest.class.getClassLoader())) {
            System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
            Method main = loader.loadClass("Example").getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        return out.toString(StandardCharsets.UTF_8);
    }
}
