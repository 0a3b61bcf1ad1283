package org.longsummer.web;

import io.javalin.config.RoutesConfig;

/** The whole surface on one screen. Everything else that is served is a static file: the pages, their scripts, and the chart library. */
final class Routes {
    private Routes() {}

    static void lay(RoutesConfig routes, HealthApi health, HouseApi house, YardApi yard, UnitApi units, VisitApi visits, ImportApi files) {
        routes.get("/", request -> request.redirect("yard/"));

        routes.get("/health", health::show);

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

        routes.get("/api/*", Failures::unknownAddress);
        routes.post("/api/*", Failures::unknownAddress);
        routes.delete("/api/*", Failures::unknownAddress);
    }
}
