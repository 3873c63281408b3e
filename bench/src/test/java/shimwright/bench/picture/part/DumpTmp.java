package shimwright.bench.picture.part;

import java.nio.file.*;
import java.util.*;
import shimwright.bench.picture.section.SampleUnits;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.part.*;

class DumpTmp {
    public static void main(String[] a) throws Exception {
        StringBuilder h =
                new StringBuilder("<body style='margin:0;display:flex;flex-wrap:wrap;gap:6px;background:#888'>");
        if (a[0].equals("std")) {
            for (int i = 1; i < a.length; i++) {
                var f = StandardParts.shipped().byStamp(a[i]);
                if (!f.isOk()) {
                    System.err.println(a[i] + " " + f.refusals());
                    continue;
                }
                h.append(PartPicture.of(f.orElseThrow().matches().get(0).part(), "p" + i, UnitSystem.METRIC));
            }
        } else {
            var u = SampleUnits.type(a[0]).resolve(a[1]);
            int n = 0;
            List<String> want = List.of(a).subList(3, a.length);
            for (var it : u.type().items())
                if (want.isEmpty() || want.contains(it.id()))
                    h.append(PartPicture.of(u, it, Optional.empty(), "p" + n++, UnitSystem.METRIC));
            if (want.isEmpty() || want.contains("F"))
                for (var f : u.type().fasteners()) h.append(PartPicture.of(u, f, "p" + n++, UnitSystem.METRIC));
        }
        Files.writeString(Path.of(a[0].equals("std") ? "/tmp/h-draw/std.html" : a[2]), h.toString());
    }
}
