package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;

/** Little memory and few file handles: a sentence where something cannot be done, and the program lives on. */
class ScarceTest {
    private static final String JOB = "/job/job-v-0093";

    private final Path work;

    ScarceTest(@TempDir Path work) {
        this.work = work;
    }

    /** 24 MB were too little for the PDF. */
    @Test
    void whatTheMemoryIsTooSmallForIsASentenceAndNothingIsLost() throws IOException {
        Path data = DemoBench.copy();
        int kept = 0;
        int sentences = 0;
        try (ProgramProcess program = ProgramProcess.serve(work, data, 0, List.of("-Xms8m", "-Xmx24m"))) {
            for (String page : List.of("/", JOB + "/record.pdf", JOB + "/build", "/sheets")) {
                sentences += answered(program, RawRequests.get(program.port(), page, "")) == 200 ? 0 : 1;
                RawRequests.Answer note = RawRequests.form(
                        program.port(),
                        JOB + "/note",
                        "",
                        "step=E02&text=little+memory&entry=note-memory-" + page.length());
                kept += answered(program, note) == 303 ? 1 : 0;
            }
            assertThat(program.lives()).as(program.errors()).isTrue();
        }
        LoggerFactory.getLogger(ScarceTest.class).info("{} notes kept, {} answers were a sentence", kept, sentences);
        try (DemoBench bench = DemoBench.at(data)) {
            assertThat(bench.get("/api/jobs/job-v-0093/entries").body().split("\"note-memory-", -1))
                    .hasSize(kept + 1);
        }
    }

    /** The status of an answer that is a page or a paper, or a sentence that says why there is none. */
    private static int answered(ProgramProcess program, RawRequests.Answer answer) throws IOException {
        assertThat(answer.status()).as(answer.head() + program.errors()).isIn(200, 303, 503);
        if (answer.status() == 503) {
            assertThat(answer.body()).contains("memory").doesNotContain("OutOfMemory", "\tat ");
        }
        return answer.status();
    }

    @Test
    void atTwoHundredAndFiftySixFileHandlesIdleConnectionsHoldUpNobody() throws IOException {
        List<Socket> idle = new ArrayList<>();
        try (ProgramProcess program = ProgramProcess.serve(work, DemoBench.copy(), 256, List.of("-Xmx128m"))) {
            for (int i = 0; i < 204; i++) {
                idle.add(RawRequests.connect(program.port()));
            }
            assertThat(RawRequests.get(program.port(), "/", "").status()).isEqualTo(200);
            for (int i = 0; i < 100; i++) {
                idle.add(RawRequests.connect(program.port()));
            }
            assertThat(RawRequests.form(program.port(), JOB + "/note", "", "step=E02&text=many&entry=many-idle-1")
                            .status())
                    .isEqualTo(303);
            assertThat(program.errors()).doesNotContain("Too many open files", "Exception");
        } finally {
            for (Socket socket : idle) {
                socket.close();
            }
        }
    }
}
