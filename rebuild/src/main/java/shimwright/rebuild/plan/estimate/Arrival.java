package shimwright.rebuild.plan.estimate;

import java.time.LocalDate;

/**
 * Something that comes from elsewhere: a send-out due back, a part on back order. It is there on the morning of its day.
 *
 * @param id named in {@link UncertainTask#after}
 * @param due the day it is promised for
 * @param late days after that day; less than 0 for early
 */
public record Arrival(String id, LocalDate due, ThreePoint late) {}
