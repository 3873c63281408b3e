package shimwright.rebuild.plan.crew;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Work that shares resources. Sought is the timetable whose last end is soonest. An id that nothing bears, or that stands
 * twice, is a bug of the maker and throws {@link IllegalArgumentException}.
 *
 * @param resources what is shared
 * @param activities what is to be done, in the order that settles ties
 * @param links time lags
 * @param aparts pairs with time between them
 */
public record Project(List<Resource> resources, List<Activity> activities, List<Link> links, List<ChangeOver> aparts) {
    /** Longest horizon that can be reckoned with. */
    private static final int LONGEST = 1 << 29;

    public Project {
        resources = List.copyOf(resources);
        activities = List.copyOf(activities);
        links = List.copyOf(links);
        aparts = List.copyOf(aparts);
        Set<String> shared = new HashSet<>();
        resources.forEach(resource -> fresh(shared, resource.id()));
        Set<String> ids = new HashSet<>(Set.of(""));
        activities.forEach(activity -> fresh(ids, activity.id()));
        activities.forEach(activity -> activity.needs().keySet().forEach(id -> known(shared, id)));
        links.forEach(link -> {
            known(ids, link.from());
            known(ids, link.to());
        });
        aparts.forEach(apart -> {
            known(ids, apart.a());
            known(ids, apart.b());
        });
        double horizon = activities.stream().mapToDouble(Activity::duration).sum()
                + links.stream()
                        .mapToDouble(link -> Math.abs((double) link.least()))
                        .sum()
                + aparts.stream()
                        .mapToDouble(apart -> (double) apart.afterA() + apart.afterB())
                        .sum();
        if (horizon > LONGEST) {
            throw new IllegalArgumentException("a horizon of " + horizon + ": take a larger unit of time");
        }
    }

    /** Without times between. */
    public Project(List<Resource> resources, List<Activity> activities, List<Link> links) {
        this(resources, activities, links, List.of());
    }

    private static void fresh(Set<String> ids, String id) {
        if (!ids.add(id)) {
            throw new IllegalArgumentException(id + " stands twice");
        }
    }

    private static void known(Set<String> ids, String id) {
        if (!ids.contains(id)) {
            throw new IllegalArgumentException("nothing is called " + id);
        }
    }

    /** The same with these links. */
    Project with(List<Link> others) {
        return new Project(resources, activities, others, aparts);
    }
}
