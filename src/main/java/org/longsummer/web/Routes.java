package org.longsummer.web;

import io.javalin.config.RoutesConfig;

/** The whole surface on one screen. Everything else that is served is a static file: the pages, their scripts, and the chart library. */
final class Routes {
    private Routes() {}

    static void lay(RoutesConfig routes, HouseApi house, YardApi yard, UnitApi units, VisitApi visits, ImportApi files, OfflineApi offline,
            AppShell shell) {
        routes.get("/", request -> request.redirect("yard/"));

        routes.get("/api/house", house::show);
        routes.post("/api/demo", house::bringDemo);
        routes.delete("/api/demo", house::removeDemo);
        routes.get("/api/yard", yard::show);

        routes.post("/api/units", units::add);
        routes.get("/api/units/{unit}", units::show);
        routes.get("/api/units/{unit}/blank-visit", visits::blank);
        routes.post("/api/units/{unit}/judge", visits::judge);
        routes.post("/api/units/{unit}/visits", visits::save);

        routes.get("/api/visits/{visit}", visits::show);
        routes.post("/api/visits/{visit}/correction", visits::correct);
        routes.post("/api/visits/{visit}/withdrawal", visits::withdraw);

        routes.post("/api/import", files::take);

        routes.get("/api/offline/depots", offline::depots);
        routes.get("/api/offline/fleet", offline::fleet);
        routes.get("/api/offline/units/{unit}", offline::unit);
        routes.post("/api/offline/units/{unit}", offline::addUnit);
        routes.get("/service-worker.js", shell::serviceWorker);
        routes.get("/u/{unit}", offline::openSticker);
        routes.get("/api/units/{unit}/sticker.svg", offline::sticker);

        routes.get("/api/*", Failures::unknownAddress);
        routes.post("/api/*", Failures::unknownAddress);
        routes.delete("/api/*", Failures::unknownAddress);
    }
}
