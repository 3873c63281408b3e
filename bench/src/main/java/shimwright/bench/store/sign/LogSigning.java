package shimwright.bench.store.sign;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;
import shimwright.bench.store.disk.Disk;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing;

/** Signs and remembers for one log. */
public final class LogSigning implements Signing {
    private final OwnerFolder owner;
    private final String folder;
    private final Supplier<Optional<String>> shop;

    public LogSigning(OwnerFolder owner, String folder, Supplier<Optional<String>> shop) {
        this.owner = owner;
        this.folder = folder;
        this.shop = shop;
    }

    @Override
    public void remember(Occasion occasion, String stream, Head head) {
        Optional<String> known = shop.get();
        if (known.isEmpty()) {
            return;
        }
        try {
            owner.remember(occasion, known.get(), stream, head, folder);
        } catch (IOException full) {
            return; // the owner's disk is not the shop's: work goes on
        }
    }

    @Override
    public byte[] sign(byte[] document, String stream, Head head) {
        return shop.get()
                .map(known -> owner.sign(SignedHead.What.RECORD, known, stream, head, Optional.of(Disk.hash(document)))
                        .behind(document))
                .orElse(document);
    }

    @Override
    public Optional<String> line(String stream, Head head) {
        return shop.get()
                .map(known -> owner.sign(SignedHead.What.RECORD, known, stream, head, Optional.empty())
                        .line());
    }
}
