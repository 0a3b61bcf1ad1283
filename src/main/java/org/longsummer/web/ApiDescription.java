package org.longsummer.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What each address of the API is for, what it takes and what it answers: one line an address. One that is missing here is in the
 * document all the same, marked as not described.
 */
final class ApiDescription {
    private static final String FILES = "multipart/form-data";
    private static final String PICTURE = "image/*";
    private static final List<Operation> ALL = all();

    private ApiDescription() {}

    /**
     * One address.
     *
     * @param takes the record of its body, where it is JSON
     * @param takesOther the type of its body, where it is none
     * @param gives the record that it answers
     * @param givesOther the type of its answer, where it is no JSON
     * @param asks parameters of the query
     */
    record Operation(String method, String path, String summary, int status, Optional<Class<?>> takes, String takesOther, Optional<Class<?>> gives,
            String givesOther, List<String> asks) {
        private Operation takes(Class<?> kind) {
            return new Operation(method, path, summary, status, Optional.of(kind), takesOther, gives, givesOther, asks);
        }

        private Operation takes(String type) {
            return new Operation(method, path, summary, status, takes, type, gives, givesOther, asks);
        }

        private Operation gives(String type) {
            return new Operation(method, path, summary, status, takes, takesOther, gives, type, asks);
        }

        private Operation status(int other) {
            return new Operation(method, path, summary, other, takes, takesOther, gives, givesOther, asks);
        }

        private Operation asks(String... names) {
            return new Operation(method, path, summary, status, takes, takesOther, gives, givesOther, List.of(names));
        }
    }

    static Optional<Operation> of(String method, String path) {
        return ALL.stream().filter(operation -> operation.method().equals(method) && operation.path().equals(path)).findFirst();
    }

    /** Methods and paths that are described. */
    static List<String> names() {
        return ALL.stream().map(operation -> operation.method() + " " + operation.path()).toList();
    }

    private static Operation get(String path, String summary, Class<?> gives) {
        return operation("GET", path, summary, gives);
    }

    private static Operation post(String path, String summary, Class<?> gives) {
        return operation("POST", path, summary, gives);
    }

    private static Operation delete(String path, String summary, Class<?> gives) {
        return operation("DELETE", path, summary, gives);
    }

    private static Operation operation(String method, String path, String summary, Class<?> gives) {
        return new Operation(method, path, summary, 200, Optional.empty(), "", Optional.ofNullable(gives), "", List.of());
    }

    private static List<Operation> all() {
        List<Operation> all = new ArrayList<>();
        all.addAll(fleet());
        all.addAll(files());
        all.addAll(setUp());
        all.addAll(people());
        all.addAll(money());
        all.addAll(rounds());
        return List.copyOf(all);
    }

    private static List<Operation> fleet() {
        return List.of(
                get("/health", "How the program is", HealthApi.Health.class),
                get("/api/openapi.json", "This document", null),
                get("/api/house", "Whose record this is and who asks", HouseApi.House.class),
                get("/api/signs", "What each fault shows on the instruments", SignsApi.SignsView.class).asks("system"),
                post("/api/demo", "Bring the invented demo fleet into an empty record", HouseApi.House.class),
                delete("/api/demo", "Remove the demo fleet", HouseApi.House.class),
                get("/api/yard", "The fleet, dearest to wait for first, fifty a page", YardApi.YardView.class)
                        .asks("system", "depot", "state", "condition", "text", "duty", "order", "after", "after_unit"),
                post("/api/units", "Enter a unit", UnitApi.Added.class).takes(UnitApi.Form.class).status(201).asks("system"),
                get("/api/units/{unit}", "A unit with its whole record", UnitApi.UnitPage.class).asks("system"),
                get("/api/units/{unit}/form", "A unit's boxes as they may be edited", FleetApi.EditPage.class).asks("system"),
                post("/api/units/{unit}/form", "Edit a unit", FleetApi.Done.class).takes(UnitApi.Form.class).asks("system"),
                post("/api/units/{unit}/move", "Put a unit elsewhere", FleetApi.Done.class).takes(UnitApi.Form.class),
                post("/api/units/{unit}/swap", "Put right two units that were mixed up", FleetApi.Done.class).takes(UnitApi.Form.class),
                post("/api/units/{unit}/replacement", "Enter the machine that took a unit's place", FleetApi.Done.class).takes(UnitApi.Form.class).status(201),
                get("/api/units/{unit}/changes", "Who changed what of a unit", ChangesApi.Changes.class),
                get("/api/units/{unit}/blank-visit", "What a new visit begins with: the last one's values", VisitApi.BlankPage.class).asks("system"),
                post("/api/units/{unit}/judge", "What a visit would say if it were saved now", VisitApi.DraftView.class).takes(VisitApi.Form.class).asks("system"),
                post("/api/units/{unit}/visits", "Save a visit; the same id twice stores once", VisitApi.SavedView.class).takes(VisitApi.Form.class).status(201)
                        .asks("system"),
                get("/api/visits/{visit}", "A visit with its verdict and all its reasons", VisitApi.VisitPage.class).asks("system"),
                post("/api/visits/{visit}/correction", "Save a visit in the place of this one", VisitApi.SavedView.class).takes(VisitApi.Form.class).status(201)
                        .asks("system"),
                post("/api/visits/{visit}/withdrawal", "Let a visit no longer count", VisitApi.Withdrawn.class).takes(VisitApi.WithdrawalForm.class),
                post("/api/visits/{visit}/other-unit", "Give a visit to the unit whose it was", FleetApi.Done.class).takes(UnitApi.Form.class),
                post("/api/visits/{visit}/photos", "Add a picture to a visit", PhotoView.class).takes(PICTURE).status(201).asks("id", "subject", "by"),
                get("/api/photos/{photo}", "A picture", null).gives(PICTURE),
                post("/api/photos/{photo}/removal", "Remove a picture; that it was there stays", PhotoView.class).takes(PhotoApi.RemovalForm.class),
                get("/api/units/{unit}/sticker.svg", "A code that opens the unit's page", null).gives("image/svg+xml").asks("scheme"));
    }

    private static List<Operation> files() {
        return List.of(
                post("/api/import", "Take files in, or with try=yes say what would happen", null).takes(FILES),
                post("/api/handovers", "Hand files over, to be asked about step by step", HandoverView.class).takes(FILES).status(202),
                get("/api/handovers/{handover}", "How far they have come", HandoverView.class),
                post("/api/handovers/{handover}/answers", "Say how they are to be read", HandoverView.class).takes(HandoverApi.AnswersForm.class).status(202),
                post("/api/handovers/{handover}/taking", "Take them in", HandoverView.class).status(202),
                delete("/api/handovers/{handover}", "Stop; nothing of them is taken in", HandoverView.class),
                get("/api/record", "The whole record as CSV files and pictures", null).gives("application/zip"),
                post("/api/record", "Bring a whole record in", ImportApi.Imported.class).takes(FILES),
                get("/api/offline/depots", "Depots that a phone may carry with it", OfflineApi.DepotView[].class),
                get("/api/offline/fleet", "Units of depots, for a phone without signal", null).asks("depot"),
                get("/api/offline/units/{unit}", "One unit, for a phone without signal", null),
                post("/api/offline/units/{unit}", "Enter a unit that a phone made", OfflineApi.Added.class).takes(OfflineApi.NewUnit.class).status(201));
    }

    private static List<Operation> setUp() {
        return List.of(
                get("/api/depots", "The places where vehicles stand", DepotApi.Page.class).asks("system"),
                post("/api/depots", "Save a depot", DepotApi.DepotView.class).takes(UnitApi.Form.class).asks("system"),
                post("/api/depots/hours", "Running hours of each month, from the season's length", DepotApi.Hours.class).takes(UnitApi.Form.class),
                get("/api/technicians", "What technicians read with", TechnicianApi.Page.class).asks("system"),
                post("/api/technicians", "Save what somebody reads with", TechnicianApi.ToolkitView.class).takes(UnitApi.Form.class).asks("system"),
                get("/api/business", "Whose paper it is", BusinessApi.BusinessView.class),
                post("/api/business", "Save whose paper it is", BusinessApi.BusinessView.class).takes(UnitApi.Form.class),
                get("/api/business/logo", "The logo", null).gives(PICTURE),
                post("/api/business/logo", "Save the logo", BusinessApi.BusinessView.class).takes(PICTURE),
                delete("/api/business/logo", "Remove the logo", BusinessApi.BusinessView.class));
    }

    private static List<Operation> people() {
        return List.of(
                get("/api/session", "Who asks", SignInApi.Who.class),
                post("/api/session", "Sign in", SignInApi.Who.class).takes(SignInApi.Form.class),
                delete("/api/session", "Sign out", SignInApi.Who.class),
                post("/api/invitation", "Choose a password by a link", InvitationApi.Invited.class).takes(InvitationApi.Form.class),
                get("/api/account", "One's own account", AccountApi.Account.class),
                post("/api/account/password", "Change one's password", AccountApi.Account.class).takes(AccountApi.PasswordForm.class),
                delete("/api/account/sessions", "Sign out everywhere", SignInApi.Who.class),
                delete("/api/account/sessions/{session}", "Sign out one browser or phone", AccountApi.Account.class),
                post("/api/account/programs", "Make a key for a program; it is told once", AccountApi.Made.class).takes(AccountApi.ProgramForm.class).status(201),
                delete("/api/account/programs/{program}", "Withdraw a program's key", AccountApi.Account.class),
                get("/api/people", "The people with an account", PeopleApi.PeoplePage.class),
                post("/api/people", "Add somebody", PeopleApi.Invitation.class).takes(PeopleApi.Form.class),
                post("/api/people/{person}", "Change what somebody is and sees", PeopleApi.PeoplePage.class).takes(PeopleApi.Form.class),
                post("/api/people/{person}/closing", "Close an account", PeopleApi.PeoplePage.class),
                post("/api/people/{person}/reopening", "Open it again", PeopleApi.PeoplePage.class),
                post("/api/people/{person}/invitation", "Invite somebody anew", PeopleApi.Invitation.class),
                delete("/api/people/{person}/sessions", "Sign somebody out everywhere", PeopleApi.PeoplePage.class),
                get("/api/units/{unit}/sheet-links", "Links that open a unit's sheet for its owner", SheetLinkApi.Links.class),
                post("/api/units/{unit}/sheet-links", "Make such a link; it is told once", SheetLinkApi.Made.class).status(201),
                delete("/api/units/{unit}/sheet-links/{link}", "Withdraw a link", SheetLinkApi.Links.class),
                get("/api/changes", "Who changed what, when, and what was before", ChangesApi.Changes.class).asks("page"));
    }

    private static List<Operation> money() {
        return List.of(
                get("/api/units/{unit}/ahead", "What lies ahead of a unit, and what is worth doing", AheadView.class),
                get("/api/units/{unit}/weighing", "Keep, clean, repair and replace in money", WeighingView.class).asks("on_site"),
                post("/api/units/{unit}/quote", "Take a price in hand", WeighingView.class).takes(UnitApi.Form.class),
                delete("/api/units/{unit}/quote", "Forget it", WeighingView.class),
                get("/api/units/{unit}/sheet", "The owner's sheet", SheetApi.SheetView.class).asks("system"),
                get("/api/units/{unit}/sheet.pdf", "The owner's sheet to print", null).gives("application/pdf").asks("system"),
                get("/api/sheet", "The sheet of an owner's link", SheetApi.SheetView.class).asks("system"),
                get("/api/sheet.pdf", "The same to print", null).gives("application/pdf").asks("system"),
                get("/api/prices", "The price list of the fleet, a depot or a unit", PriceView.class).asks("depot", "unit"),
                post("/api/prices", "Change figures of it", PriceView.class).takes(UnitApi.Form.class).asks("depot", "unit"),
                get("/api/prices/file", "The same as CSV", null).gives("text/csv").asks("depot", "unit"),
                post("/api/prices/file", "Take figures from CSV", PriceView.class).takes(FILES).asks("depot", "unit"),
                get("/api/planned-work", "What is planned, with what it costs and saves", PlanApi.PlansView.class).asks("depot", "unit"),
                post("/api/planned-work", "Plan work on a unit; the same id twice plans once", PlanApi.PlansView.class).takes(UnitApi.Form.class).status(201),
                post("/api/planned-work/{plan}/done", "Say that it was done", PlanApi.PlansView.class),
                post("/api/planned-work/{plan}/drop", "Drop it", PlanApi.PlansView.class));
    }

    private static List<Operation> rounds() {
        return List.of(
                post("/api/yard/planned-work", "Plan work on units chosen in the yard", ChosenWorkApi.Planned.class).takes(ChosenWorkApi.Form.class).status(201),
                get("/api/yard.csv", "All units that fit a filter, as CSV", null).gives("text/csv"),
                post("/api/yard.csv", "Units chosen in the yard, as CSV", null).takes(YardChoice.Form.class).gives("text/csv"),
                get("/api/season", "How far each depot is with the season's checks", SeasonApi.SeasonView.class),
                get("/api/season/history", "What became of the acts there were", SeasonApi.HistoryView.class),
                get("/api/rounds", "The latest rounds", RoundApi.ListView.class),
                post("/api/rounds", "Make a round of units chosen in the yard", RoundApi.Made.class).takes(RoundApi.Form.class).status(201),
                get("/api/rounds/{round}", "A round in the order in which one walks it", RoundApi.RoundView.class).asks("system"),
                post("/api/rounds/{round}/stands", "Say in which row and place units stand", RoundApi.RoundView.class).takes(RoundApi.StandsForm.class));
    }
}
