package org.longsummer.web;

import static org.longsummer.web.Needs.ADMINISTER;
import static org.longsummer.web.Needs.LOOK_AFTER;
import static org.longsummer.web.Needs.NOTHING;
import static org.longsummer.web.Needs.SEE;
import static org.longsummer.web.Needs.SHEET;
import static org.longsummer.web.Needs.SIGNED_IN;
import static org.longsummer.web.Needs.VISIT;

import io.javalin.config.RoutesConfig;

/**
 * The whole surface on one screen, and what each address needs. Everything else that is served is a static file, the same for
 * everybody: the pages, their scripts, and the chart library.
 */
final class Routes {
    private Routes() {}

    static void lay(RoutesConfig routes, HealthApi health, HouseApi house, SignsApi signs, YardApi yard, UnitApi units, VisitApi visits,
            ImportApi files, OfflineApi offline, AppShell shell) {
        routes.get("/", request -> request.redirect("yard/"), NOTHING);

        routes.get("/health", health::show, NOTHING);

        routes.get("/api/house", house::show, SEE);
        routes.get("/api/signs", signs::show, SEE);
        routes.post("/api/demo", house::bringDemo, ADMINISTER);
        routes.delete("/api/demo", house::removeDemo, ADMINISTER);
        routes.get("/api/yard", yard::show, SEE);
        routes.get("/api/yard.csv", yard::file, SEE);
        routes.post("/api/yard.csv", yard::chosenFile, SEE);

        routes.post("/api/units", units::add, VISIT);
        routes.get("/api/units/{unit}", units::show, SEE);
        routes.get("/api/units/{unit}/blank-visit", visits::blank, SEE);
        routes.post("/api/units/{unit}/judge", visits::judge, SEE);
        routes.post("/api/units/{unit}/visits", visits::save, VISIT);

        routes.get("/api/visits/{visit}", visits::show, SEE);
        routes.post("/api/visits/{visit}/correction", visits::correct, VISIT);
        routes.post("/api/visits/{visit}/withdrawal", visits::withdraw, VISIT);

        routes.post("/api/import", files::take, LOOK_AFTER);

        routes.get("/api/offline/depots", offline::depots, SEE);
        routes.get("/api/offline/fleet", offline::fleet, SEE);
        routes.get("/api/offline/units/{unit}", offline::unit, SEE);
        routes.post("/api/offline/units/{unit}", offline::addUnit, VISIT);
        routes.get("/service-worker.js", shell::serviceWorker, NOTHING);
        routes.get("/u/{unit}", offline::openSticker, NOTHING);
        routes.get("/api/units/{unit}/sticker.svg", offline::sticker, SEE);

        routes.get("/api/*", Failures::unknownAddress, NOTHING);
        routes.post("/api/*", Failures::unknownAddress, NOTHING);
        routes.delete("/api/*", Failures::unknownAddress, NOTHING);
    }

    /** The manager's day: rounds and planned work. */
    static void lay(RoutesConfig routes, RoundApi rounds, ChosenWorkApi plans, SeasonApi season) {
        routes.get("/api/rounds", rounds::list, SEE);
        routes.post("/api/rounds", rounds::make, VISIT);
        routes.get("/api/rounds/{round}", rounds::show, SEE);
        routes.post("/api/rounds/{round}/stands", rounds::stand, VISIT);
        routes.get("/api/season", season::show, SEE);
        routes.get("/api/season/history", season::history, SEE);
        routes.post("/api/yard/planned-work", plans::plan, LOOK_AFTER);
    }

    /** Money: what lies ahead, the weighing, prices, planned work. */
    static void lay(RoutesConfig routes, WeighingApi weighing, PriceApi prices, PlanApi plans, SheetApi sheets) {
        routes.get("/api/units/{unit}/ahead", weighing::ahead, SEE);
        routes.get("/api/units/{unit}/weighing", weighing::weigh, SEE);
        routes.post("/api/units/{unit}/quote", weighing::takeQuote, LOOK_AFTER);
        routes.delete("/api/units/{unit}/quote", weighing::forgetQuote, LOOK_AFTER);

        routes.get("/api/units/{unit}/sheet", sheets::show, SEE);
        routes.get("/api/units/{unit}/sheet.pdf", sheets::pdf, SEE);
        routes.get("/api/sheet", sheets::open, SHEET);
        routes.get("/api/sheet.pdf", sheets::openPdf, SHEET);

        routes.get("/api/prices", prices::show, SEE);
        routes.post("/api/prices", prices::change, LOOK_AFTER);
        routes.get("/api/prices/file", prices::file, SEE);
        routes.post("/api/prices/file", prices::takeFile, LOOK_AFTER);

        routes.get("/api/planned-work", plans::list, SEE);
        routes.post("/api/planned-work", plans::add, LOOK_AFTER);
        routes.post("/api/planned-work/{plan}/done", plans::done, VISIT);
        routes.post("/api/planned-work/{plan}/drop", plans::drop, LOOK_AFTER);
    }

    /** People and access. */
    static void lay(RoutesConfig routes, SignInApi door, InvitationApi invitations, AccountApi account, PeopleApi people, SheetLinkApi links,
            ChangesApi changes) {
        routes.get("/api/session", door::who, NOTHING);
        routes.post("/api/session", door::signIn, NOTHING);
        routes.delete("/api/session", door::signOut, NOTHING);
        routes.post("/api/invitation", invitations::take, NOTHING);

        routes.get("/api/account", account::show, SIGNED_IN);
        routes.post("/api/account/password", account::changePassword, SIGNED_IN);
        routes.delete("/api/account/sessions", account::endAllSessions, SIGNED_IN);
        routes.delete("/api/account/sessions/{session}", account::endSession, SIGNED_IN);
        routes.post("/api/account/programs", account::makeProgram, SIGNED_IN);
        routes.delete("/api/account/programs/{program}", account::withdrawProgram, SIGNED_IN);

        routes.get("/api/people", people::show, ADMINISTER);
        routes.post("/api/people", people::add, ADMINISTER);
        routes.post("/api/people/{person}", people::change, ADMINISTER);
        routes.post("/api/people/{person}/closing", people::close, ADMINISTER);
        routes.post("/api/people/{person}/reopening", people::reopen, ADMINISTER);
        routes.post("/api/people/{person}/invitation", people::invite, ADMINISTER);
        routes.delete("/api/people/{person}/sessions", people::endSessions, ADMINISTER);

        routes.get("/api/units/{unit}/sheet-links", links::show, VISIT);
        routes.post("/api/units/{unit}/sheet-links", links::make, VISIT);
        routes.delete("/api/units/{unit}/sheet-links/{link}", links::withdraw, VISIT);

        routes.get("/api/changes", changes::show, ADMINISTER);
        routes.get("/api/units/{unit}/changes", changes::ofUnit, LOOK_AFTER);
    }

    /** What a shop keeps besides visits: what becomes of units, photos, depots, instruments, whose paper it is. */
    static void lay(RoutesConfig routes, FleetApi fleet, PhotoApi photos, DepotApi depots, TechnicianApi technicians, BusinessApi business,
            RecordApi record, HandoverApi handovers) {
        routes.post("/api/handovers", handovers::begin, LOOK_AFTER);
        routes.get("/api/handovers/{handover}", handovers::show, LOOK_AFTER);
        routes.post("/api/handovers/{handover}/answers", handovers::answer, LOOK_AFTER);
        routes.post("/api/handovers/{handover}/taking", handovers::take, LOOK_AFTER);
        routes.delete("/api/handovers/{handover}", handovers::stop, LOOK_AFTER);
        routes.get("/api/record", record::give, LOOK_AFTER);
        routes.post("/api/record", record::take, ADMINISTER);

        routes.get("/api/units/{unit}/form", fleet::form, SEE);
        routes.post("/api/units/{unit}/form", fleet::edit, LOOK_AFTER);
        routes.post("/api/units/{unit}/move", fleet::move, LOOK_AFTER);
        routes.post("/api/units/{unit}/swap", fleet::swap, LOOK_AFTER);
        routes.post("/api/units/{unit}/replacement", fleet::replace, LOOK_AFTER);
        routes.post("/api/visits/{visit}/other-unit", fleet::giveVisit, LOOK_AFTER);

        routes.post("/api/visits/{visit}/photos", photos::add, VISIT);
        routes.get("/api/photos/{photo}", photos::show, SEE);
        routes.post("/api/photos/{photo}/removal", photos::remove, LOOK_AFTER);

        routes.get("/api/depots", depots::list, SEE);
        routes.post("/api/depots", depots::save, LOOK_AFTER);
        routes.post("/api/depots/hours", depots::hours, SEE);
        routes.get("/api/technicians", technicians::list, SEE);
        routes.post("/api/technicians", technicians::save, VISIT);
        routes.get("/api/business", business::show, SEE);
        routes.post("/api/business", business::save, ADMINISTER);
        routes.get("/api/business/logo", business::showLogo, SEE);
        routes.post("/api/business/logo", business::saveLogo, ADMINISTER);
        routes.delete("/api/business/logo", business::removeLogo, ADMINISTER);
    }
}
