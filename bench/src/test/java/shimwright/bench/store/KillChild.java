package shimwright.bench.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shimwright.bench.store.log.EntryRow;
import shimwright.bench.store.log.EntryText;
import shimwright.bench.store.log.OpenLog;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.job.PictureStore.Picture;

/**
 * A program that keeps entries and pictures as fast as it can and answers each on its standard output, until it is
 * killed. It begins when it is told to and ends with whoever started it.
 */
final class KillChild {
    private final OpenLog log;
    private final PictureStore pictures;
    private final FileOutputStream answers = new FileOutputStream(FileDescriptor.out);
    private final String run;

    private KillChild(OpenLog log, PictureStore pictures, String run) {
        this.log = log;
        this.pictures = pictures;
        this.run = run;
    }

    /** Arguments: a data folder or a database's address, a name for this run, {@code honest} or {@code liar}, a folder. */
    public static void main(String[] arguments) throws IOException {
        String place = arguments[0];
        warmUp(place, Path.of(arguments[3], "warm-" + arguments[1]));
        if (System.in.read() != 'g') {
            return;
        }
        Thread watch = new Thread(KillChild::endWithParent);
        watch.setDaemon(true);
        watch.start();
        KillChild child = over(place, arguments[1]);
        if (arguments[2].equals("liar")) {
            child.lie();
        } else {
            for (int bench = 0; bench < 3; bench++) {
                int number = bench;
                new Thread(() -> child.work(number)).start();
            }
        }
    }

    private static KillChild over(String place, String run) {
        ShopStore store = (place.startsWith("postgresql:")
                        ? ShopStore.at(place, OpenLog.Opening.WRITE, Optional.empty())
                        : ShopStore.in(Path.of(place), OpenLog.Opening.WRITE, Optional.empty()))
                .orElseThrow();
        return new KillChild(store.log(), store.pictures(), run);
    }

    /** Loads and runs everything once in a place of its own, so that the time before the kill is spent on writing. */
    private static void warmUp(String place, Path folder) {
        KillChild child = over(folder.toString(), "warm");
        Logs.fill(child.log, 30, 1);
        child.picture(new Random(1));
        child.log.close();
        if (place.startsWith("postgresql:")) {
            over(place, "warm").log.head();
        }
    }

    private static void endWithParent() {
        try {
            System.in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException gone) {
            Runtime.getRuntime().halt(1);
        }
        Runtime.getRuntime().halt(0);
    }

    private void work(int bench) {
        EntrySamples samples = new EntrySamples(run.hashCode() + bench);
        Random random = new Random(run.hashCode() - bench);
        for (int i = 0; true; i++) {
            String id = run + "-" + bench + "-" + i;
            String job = "job-" + run + "-" + bench;
            Entry entry = random.nextInt(5) == 0 ? picture(random) : samples.entry();
            LogEntry kept = log.append(samples.draft(id, job, entry), stream -> List.of())
                    .orElseThrow();
            answer(kept.draft().id(), kept.hash());
        }
    }

    private Entry picture(Random random) {
        Picture kept =
                pictures.keep("noise.png", SamplePictures.noise(random, 24, 24)).orElseThrow();
        return new Entry.PictureAdded("job", kept.hash(), kept.mediaType(), kept.size(), "noise");
    }

    /** The same the wrong way round: the answers to ten entries go out before the first is kept. */
    private void lie() {
        Head whole = log.head();
        Head own = Head.EMPTY;
        for (int round = 0; true; round++) {
            List<Draft> promised = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                Entry note = new Entry.NoteMade("job", "note " + i);
                promised.add(new Draft("job-" + run, run + "-" + round + "-" + i, Instant.EPOCH, "rebuilder", note));
            }
            for (Draft draft : promised) {
                EntryRow row = EntryRow.after(whole, own, EntryText.of(draft));
                answer(draft.id(), row.hash());
                whole = row.head();
                own = row.streamHead();
            }
            promised.forEach(draft -> log.append(draft, stream -> List.of()).orElseThrow());
        }
    }

    private void answer(String id, String hash) {
        try {
            // one write of a short line: a pipe takes it whole or not at all
            answers.write((id + " " + hash + "\n").getBytes(StandardCharsets.US_ASCII));
        } catch (IOException gone) {
            Runtime.getRuntime().halt(0);
        }
    }
}
