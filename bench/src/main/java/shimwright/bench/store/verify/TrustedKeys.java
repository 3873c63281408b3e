package shimwright.bench.store.verify;

import java.io.IOException;
import java.util.Optional;
import shimwright.bench.store.log.Fault;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sign.SignedHead;
import shimwright.bench.store.sign.SigningKey;

/**
 * The keys by which whoever checks something goes.
 *
 * @param owner whose own key counts
 * @param named the short name of another that counts as well
 */
record TrustedKeys(OwnerFolder owner, Optional<String> named) {
    TrustedKeys {
        named = named.map(name -> name.replaceAll("\\s", ""));
    }

    /** Whether there is a key by which something could be found to be signed. */
    boolean any() {
        return owner.hasKey() || named.isPresent();
    }

    /** Says whose key signed something. */
    void check(VerificationReport.Gathering report, Object place, SignedHead signed) throws IOException {
        String name = SigningKey.fingerprint(signed.key());
        boolean own = owner.hasKey() && owner.key().publicKey().equals(signed.key());
        if (own || named.equals(Optional.of(name.replace(" ", "")))) {
            report.sound("signed with the key " + name + (own ? ", your own" : ", which you named"));
        } else {
            report.fault(Fault.at(
                    place,
                    "this is signed with the key " + name + ", which is not yours"
                            + (named.isEmpty() ? "" : " nor the one you named"),
                    "If it should be another shop's, ask that shop for the name of its key and give it with --key"));
        }
    }
}
