package org.longsummer.wire;

import java.util.List;
import java.util.Optional;
import org.longsummer.wire.JudgedView.BudgetLine;

/** Views as JSON where no library can be had; member for member what the server's library makes of them. */
public final class VerdictRecord {
    private VerdictRecord() {}

    /** What a draft says, in the shape of the server's answer to the same question. */
    public static void draft(JsonWriter json, Optional<VerdictView> verdict, List<Problem> problems) {
        json.object(() -> {
            verdict.ifPresent(view -> write(json.name("verdict"), view));
            problems(json, problems);
        });
    }

    public static void problems(JsonWriter json, List<Problem> problems) {
        json.array("problems", problems, problem -> json.object(() -> json.field("field", problem.field()).field("given", problem.given())
                .field("limit", problem.limit()).field("remedy", problem.remedy())));
    }

    public static void write(JsonWriter json, VerdictView view) {
        json.object(() -> {
            json.field("visit_id", view.visitId()).field("state", view.state()).field("waiting", view.waiting())
                    .field("sentence", view.sentence()).field("finding", view.finding()).field("remedy", view.remedy())
                    .field("condition", view.condition());
            json.array("conditions", view.conditions(), line -> json.object(() -> json.field("condition", line.condition())
                    .field("phrase", line.phrase()).field("probability", line.probability()).field("text", line.text())));
            json.field("impact", view.impact()).field("severity", view.severity()).field("since", view.since());
            json.array("reasons", view.reasons(), reason -> json.object(() -> json.field("visit_id", reason.visitId())
                    .field("day", reason.day()).field("text", reason.text())));
            json.texts("cannot_tell", view.cannotTell());
            view.nextBestReading().ifPresent(next -> json.object("next_best_reading", () -> json.field("text", next.text())
                    .field("minutes", next.minutes()).field("settles", next.settles()).field("box", next.box())));
            json.field("before_and_after", view.beforeAndAfter());
            json.array("findings", view.findings(), finding -> json.object(() -> json.field("box", finding.box())
                    .field("label", finding.label()).field("text", finding.text()).field("retake", finding.retake())));
            judged(json.name("split"), view.split());
            judged(json.name("amps"), view.amps());
            json.field("closing", view.closing());
        });
    }

    private static void judged(JsonWriter json, JudgedView view) {
        json.object(() -> {
            shown(json, "measured", view.measured());
            shown(json, "expected", view.expected());
            shown(json, "expanded", view.expanded());
            view.departure().ifPresent(departure -> json.object("departure", () -> json.field("percent", departure.percent())
                    .field("low_percent", departure.lowPercent()).field("high_percent", departure.highPercent())));
            json.array("budget", view.budget(), line -> json.object(() -> line(json, line))).field("text", view.text());
        });
    }

    private static void line(JsonWriter json, BudgetLine line) {
        json.field("name", line.name()).field("source", line.source()).field("input", line.input()).field("effect", line.effect())
                .field("share_percent", line.sharePercent());
    }

    public static void shown(JsonWriter json, String name, Optional<Shown> shown) {
        shown.ifPresent(value -> json.object(name, () -> json.field("number", value.number()).field("unit", value.unit())
                .field("text", value.text())));
    }
}
