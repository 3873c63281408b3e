package shimwright.rebuild.act;

import java.text.Normalizer;
import java.util.Locale;

/** Ids of jobs, made from their numbers. */
public final class JobIds {
    private JobIds() {}

    /**
     * The id of a job: small Latin letters and digits of its number; letters of other alphabets by their code, so that two
     * numbers that differ in them do not become one id.
     */
    public static String of(String number) {
        String lower = Normalizer.normalize(number.strip(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        StringBuilder id = new StringBuilder("job");
        boolean gap = true;
        for (int c : lower.codePoints().toArray()) {
            boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
            if (plain || (c > 0x7F && Character.isLetterOrDigit(c))) {
                id.append(gap ? "-" : "").append(plain ? Character.toString(c) : "u" + Integer.toHexString(c));
                gap = !plain;
            } else {
                gap = true;
            }
        }
        return id.toString();
    }
}
