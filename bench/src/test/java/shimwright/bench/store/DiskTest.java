package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.rebuild.job.PictureStore.Picture;

/** A disk that is full or can only be read: said plainly, and work goes on when it is put right. */
class DiskTest {
    @Test
    void aFullDiskLosesNothingAndWorkGoesOnWhenThereIsRoom(@TempDir Path work) throws IOException {
        Path disk = Files.createDirectory(work.resolve("disk"));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        // a namespace of its own, so that the small disk goes away with the child
        Process child = new ProcessBuilder(
                        "unshare",
                        "-m",
                        "sh",
                        "-c",
                        "mount -t tmpfs -o size=8m none \"$1\" || { echo cannot mount; exit 0; }; exec \"$2\" -cp \"$3\""
                                + " -Djava.awt.headless=true " + DiskChild.class.getName() + " \"$1\"",
                        "sh",
                        disk.toString(),
                        java,
                        classes)
                .redirectErrorStream(true)
                .start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assumeThat(said)
                .as("making a small disk needs root and mount")
                .doesNotContain("cannot mount", "Operation not permitted", "unshare: ");
        String cannot = ": this folder cannot be used: the disk can only be read. Make room or rights, or name another"
                + " folder.";
        assertThat(said.lines())
                .containsExactly(
                        "entry: not kept: the disk is full. Nothing was lost. Put that right and post it again.",
                        "same while full: true",
                        "picture: a.png: not kept: the disk is full. Put that right and send the picture again.",
                        "kept again: true",
                        "read only: " + disk.resolve("data") + cannot,
                        "new: " + disk.resolve("other") + cannot,
                        "backup: true",
                        "after all: true");
    }

    @Test
    void aFolderWithoutTheRightToWriteIsSaid(@TempDir Path work) throws IOException {
        Path folder = Files.createDirectory(
                work.resolve("closed"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-xr-xr-x")));
        assumeThat(Files.isWritable(folder)).as("root may write anywhere").isFalse();
        assertThat(Logs.refusal(folder.resolve("data"))).contains("this user may not write there");
        assertThat(FilePictureStore.open(folder.resolve("pictures"))
                        .refusals()
                        .get(0)
                        .fact())
                .contains("this user may not write there");
    }

    @Test
    void aPictureThatCannotBeWrittenLeavesNoHalf(@TempDir Path work) throws IOException {
        FilePictureStore store = FilePictureStore.open(work).orElseThrow();
        byte[] content = SamplePictures.byLibrary("png", 5, 5);
        Picture picture = store.keep("a.png", content).orElseThrow();
        // a file where a folder should be
        Path folder = work.resolve(picture.hash().substring(0, 2));
        Files.delete(store.file(picture.hash()).orElseThrow());
        Files.delete(folder.resolve(picture.hash().substring(2, 4)));
        Files.delete(folder);
        Files.writeString(folder, "in the way");
        assertThat(store.keep("a.png", content).refusals().get(0).fact()).startsWith("not kept: ");
        assertThat(work.resolve("part")).isEmptyDirectory();
    }
}
