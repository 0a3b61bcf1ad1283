package org.longsummer.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.State;
import org.longsummer.store.FleetUnit.Duty;

/** A filter as conditions on the standing {@code s}, and the values they name. */
final class YardNarrowing {
    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> values = new HashMap<>();
    private final boolean inService;
    private final boolean atOneDepot;
    private final boolean search;

    YardNarrowing(YardFilter filter) {
        reach(filter.reach());
        inService = filter.duties().contains(Duty.IN_SERVICE);
        conditions.add(inService ? "s.in_service = 1" : "s.in_service = 0");
        if (filter.duties().size() == 1 && !inService) {
            conditions.add("s.duty = " + value(Column.word(filter.duties().iterator().next(), null)));
        }
        filter.criteria().forEach(this::add);
        search = filter.criteria().stream().anyMatch(YardCriterion.Containing.class::isInstance);
        atOneDepot = filter.criteria().stream().anyMatch(YardCriterion.AtDepot.class::isInstance)
                || !filter.reach().everywhere() && filter.reach().depots().size() == 1;
    }

    private void reach(Reach limit) {
        if (!limit.everywhere()) {
            ReachCondition reach = new ReachCondition(limit);
            conditions.add(reach.on("s.depot"));
            values.putAll(reach.values());
        }
    }

    private String value(Object value) {
        String name = "v" + values.size();
        values.put(name, value);
        return ":" + name;
    }

    private void add(YardCriterion criterion) {
        if (criterion instanceof YardCriterion.Containing containing) {
            text(containing.text());
        } else {
            conditions.add(condition(criterion));
        }
    }

    private String condition(YardCriterion criterion) {
        if (criterion instanceof YardCriterion.AtDepot at) {
            return "s.depot = " + value(at.name());
        } else if (criterion instanceof YardCriterion.InState in) {
            return in.state() == State.RETAKE ? "s.last_to_retake = 1" : "s.state = " + value(in.state().word());
        } else if (criterion instanceof YardCriterion.NeverJudged) {
            return "s.state is null";
        } else if (criterion instanceof YardCriterion.Likely likely) {
            return "s.condition = " + value(likely.condition().word());
        } else if (criterion instanceof YardCriterion.BegunSince begun) {
            return "s.condition <> 'none' and s.since >= " + value(begun.day().toString());
        } else if (criterion instanceof YardCriterion.NotVisitedSince since) {
            return "s.last_seen_ms < " + value(since.moment().toEpochMilli());
        } else if (criterion instanceof YardCriterion.WorkPlanned work) {
            return work.planned() ? "s.planned_for is not null" : "s.planned_for is null";
        } else {
            return day(criterion);
        }
    }

    private String day(YardCriterion criterion) {
        if (criterion instanceof YardCriterion.NotCheckedForSeason season) {
            return notChecked(value(season.lastOpening().toString()));
        } else if (criterion instanceof YardCriterion.DueBefore due) {
            return overdue(value(due.day().toString()));
        } else if (criterion instanceof YardCriterion.FilterDueBefore due) {
            return "s.filter_due_on < " + value(due.day().toString());
        } else if (criterion instanceof YardCriterion.WarrantyEnds ends) {
            return "s.warranty_until between " + value(ends.from().toString()) + " and " + value(ends.through().toString());
        } else if (criterion instanceof YardCriterion.InstalledBefore before) {
            return "s.installed_on < " + value(before.day().toString());
        }
        throw new IllegalStateException("no condition for " + criterion);
    }

    /** Where the season's check is not known from the visits, as in records of old, whatever check is due counts. */
    static String notChecked(String lastOpening) {
        return "(s.state is null or coalesce(s.season_due_on, s.next_due_on, '') <= " + lastOpening + ")";
    }

    static String overdue(String today) {
        return "(s.next_due_on < " + today + " or s.visit_count = 0)";
    }

    private void text(String text) {
        List<String> words = new ArrayList<>();
        for (String word : FleetUnit.folded(text.strip()).split("\\s+")) {
            words.add("s.search_text like " + value("%" + escaped(word) + "%") + " escape '!'");
        }
        String stripped = FleetUnit.folded(FleetUnit.serialKey(text));
        conditions.add("(" + String.join(" and ", words)
                + (stripped.isEmpty() ? ")" : " or s.search_text like " + value("%" + escaped(stripped) + "%") + " escape '!')"));
    }

    private static String escaped(String text) {
        return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }

    Map<String, Object> values() {
        return values;
    }

    String where() {
        return " where " + String.join(" and ", conditions);
    }

    /** The index that carries an order under this filter. */
    String index(YardOrder order) {
        return order == YardOrder.WAITING_COSTS && atOneDepot ? "standing_by_depot" : order.index();
    }

    /** What carries counting all rows, block by block: the table itself, in the order in which it lies there, unless few rows are to be counted. */
    String indexForBlocks() {
        return atOneDepot ? "indexed by standing_by_depot" : inService ? "not indexed" : "indexed by standing_by_dearest";
    }

    /** Of units out of service, which an index has side by side, so that it is quicker than the block that one lies in. */
    boolean isOfFewRows() {
        return !inService;
    }

    /** It looks into texts that no index holds. */
    boolean isSearch() {
        return search;
    }
}
