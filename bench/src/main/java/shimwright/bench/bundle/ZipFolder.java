package shimwright.bench.bundle;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * Files by name in one zip (APPNOTE 6.3, as the JDK reads it). What is read from others is read in memory only and within limits: no
 * name in it is ever a name of a file here.
 */
final class ZipFolder {
    /** Entries of a zip: the pictures, the two files beside them, and folders that others' programs put in. */
    static final int ENTRIES = UnitBundle.MOST_PICTURES + 10;

    /** Bytes that all files of a zip may have when unpacked; what is thrown away counts. */
    static final int UNPACKED = 24 * 1024 * 1024;

    /** A zip knows no time before it. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final int BLOCK = 16 * 1024;

    private final Pattern names;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<Refusal> faults = new ArrayList<>();
    private int left = UNPACKED;

    private ZipFolder(Pattern names) {
        this.names = names;
    }

    /** The same files give the same bytes. */
    static byte[] pack(Map<String, byte[]> files) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(packed)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(NO_TIME);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing into memory", impossible);
        }
        return packed.toByteArray();
    }

    /**
     * The files of a zip.
     *
     * @param packed its bytes, from anybody
     * @param names what a file in it may be called; any other is a fault
     * @return refused with every fault of the zip
     */
    static Outcome<Map<String, byte[]>> unpack(byte[] packed, Pattern names) {
        ZipFolder folder = new ZipFolder(names);
        folder.read(packed);
        if (folder.files.isEmpty() && folder.faults.isEmpty()) {
            folder.fault("bundle", "it is no zip file, or there is nothing in it", "Choose the file that was saved");
        }
        return folder.faults.isEmpty() ? Outcome.ok(folder.files) : Outcome.refused(folder.faults);
    }

    private void fault(String place, String fact, String hint) {
        faults.add(new Refusal("file", place, fact, hint));
    }

    private void read(byte[] packed) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
            int count = 0;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (++count > ENTRIES) {
                    fault("bundle", "it holds more than " + ENTRIES + " files", "Send fewer pictures");
                    return;
                }
                if (!take(zip, entry)) {
                    fault(
                            "bundle",
                            "it unpacks to more than " + UNPACKED / (1024 * 1024) + " MB",
                            "Send fewer or smaller pictures");
                    return;
                }
            }
        } catch (IOException | IllegalArgumentException damaged) {
            fault("bundle", "the zip is damaged, locked or cut short", "Have it saved and sent again");
        }
    }

    /** False where it has more bytes than are left. */
    private boolean take(ZipInputStream zip, ZipEntry entry) throws IOException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        byte[] block = new byte[BLOCK];
        boolean kept = !entry.isDirectory() && named(entry.getName());
        for (int got = zip.read(block); got >= 0; got = zip.read(block)) {
            left -= got;
            if (left < 0) {
                return false;
            }
            if (kept) {
                content.write(block, 0, got);
            }
        }
        if (kept && files.put(entry.getName(), content.toByteArray()) != null) {
            fault(entry.getName(), "it is in the bundle twice", "Have the bundle saved again");
        }
        return true;
    }

    private boolean named(String name) {
        if (names.matcher(name).matches()) {
            return true;
        }
        boolean leadsOut = name.startsWith("/") || name.contains("..") || name.contains("\\") || name.contains(":");
        fault(
                shown(name),
                leadsOut ? "its name leads out of the bundle" : "no such file belongs in a bundle",
                "Take the bundle as the other shop saved it");
        return false;
    }

    private static String shown(String name) {
        String plain = shimwright.bench.text.Characters.harmless(name);
        return "file " + (plain.length() > 80 ? plain.substring(0, 80) + "…" : plain);
    }
}
