package org.longsummer.store;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.science.statistics.Lifetime;

/**
 * How long the fleet's own machines have lived. A machine failed when it was replaced, or when its last judged visit found its compressor
 * not running; all others were still running when last heard of. A machine enters at the age at which it was first seen: of those
 * that died before, nobody knows.
 *
 * <p>Worked out once a day.
 */
final class OwnLives {
    private static final double DAYS_PER_YEAR = 365.25;
    private static final int DAYS_KEPT = 3;
    /** Every machine: from its installation, or from the visit that put it there; until it was replaced, or was seen last. */
    private static final String LIVES = """
            select u.installed_on, min(v.day) as first_seen, max(v.day) as last_seen, u.duty, s.condition,
            (select min(r.day) from visit r where r.unit_id = u.id and r.work_done like '%unit_replaced%'
                and not exists (select 1 from visit c where c.corrects_id = r.id) and not exists (select 1 from withdrawal w where w.visit_id = r.id)) as replaced_on,
            (select min(g.happened_on) from unit_change g where g.unit_id = u.id and g.kind = 'replaced') as taken_out_on
            from unit u join visit v on v.unit_id = u.id join standing s on s.unit_id = u.id
            where u.installed_on is not null group by u.id order by u.id""";

    /** By day: at one moment it is different days at different depots. */
    private final Map<LocalDate, Optional<LifeCurve>> curves = new LinkedHashMap<>();

    /** The curve that the lives give, as they were known when a day was first asked for; empty until enough of them have ended. */
    synchronized Optional<LifeCurve> curve(Handle handle, LocalDate today) {
        Optional<LifeCurve> known = curves.get(today);
        if (known == null) {
            known = LifeCurve.ofOwn(read(handle, today));
            curves.put(today, known);
            if (curves.size() > DAYS_KEPT) {
                curves.remove(curves.keySet().iterator().next());
            }
        }
        return known;
    }

    static List<Lifetime> read(Handle handle, LocalDate today) {
        List<Lifetime> lives = new ArrayList<>();
        handle.createQuery(LIVES).map((row, context) -> new Seen(LocalDate.parse(row.getString("installed_on")),
                LocalDate.parse(row.getString("first_seen")), LocalDate.parse(row.getString("last_seen")),
                row.getString("replaced_on") == null ? row.getString("taken_out_on") : row.getString("replaced_on"),
                "not_cooling".equals(row.getString("condition")), "in_service".equals(row.getString("duty")))).forEach(seen -> seen.addTo(lives, today));
        return lives;
    }

    /** One unit as it was seen. */
    private record Seen(LocalDate installed, LocalDate first, LocalDate last, String replaced, boolean dead, boolean inService) {
        void addTo(List<Lifetime> lives, LocalDate today) {
            LocalDate entered = first.isBefore(installed) ? installed : first;
            if (replaced != null) {
                add(lives, entered, LocalDate.parse(replaced), true);
            } else {
                add(lives, entered, dead || !inService ? last : today, dead);
            }
        }

        private void add(List<Lifetime> lives, LocalDate entered, LocalDate left, boolean failed) {
            double from = Math.max(0, ChronoUnit.DAYS.between(installed, entered) / DAYS_PER_YEAR);
            double to = ChronoUnit.DAYS.between(installed, left) / DAYS_PER_YEAR;
            if (to > from) {
                lives.add(new Lifetime(from, to, failed));
            }
        }
    }
}
