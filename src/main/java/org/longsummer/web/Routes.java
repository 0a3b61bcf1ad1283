package org.longsummer.web;

import io.javalin.config.RoutesConfig;

/** The whole surface on one screen. Everything else that is served is a static file: the pages, their scripts, and the chart library. */
final class Routes {
    private Routes() {}

    static void lay(RoutesConfig routes, HouseApi house, YardApi yard, UnitApi units, VisitApi visits, ImportApi files, OfflineApi offline,
            AppShell shell, FleetApi fleet, PhotoApi photos, DepotApi depots, TechnicianApi technicians, BusinessApi business) {
        routes.get("/", request -> request.redirect("yard/"));

        routes.get("/api/house", house::show);
        routes.post("/api/demo", house::bringDemo);
        routes.delete("/api/demo", house::removeDemo);
        routes.get("/api/yard", yard::show);

        routes.post("/api/units", units::add);
        routes.get("/api/units/{unit}", units::show);
        routes.get("/api/units/{unit}/form", fleet::form);
        routes.post("/api/units/{unit}/form", fleet::edit);
        routes.post("/api/units/{unit}/move", fleet::move);
        routes.post("/api/units/{unit}/swap", fleet::swap);
        routes.post("/api/units/{unit}/replacement", fleet::replace);
        routes.get("/api/units/{unit}/blank-visit", visits::blank);
        routes.post("/api/units/{unit}/judge", visits::judge);
        routes.post("/api/units/{unit}/visits", visits::save);

        routes.get("/api/visits/{visit}", visits::show);
        routes.post("/api/visits/{visit}/correction", visits::correct);
        routes.post("/api/visits/{visit}/withdrawal", visits::withdraw);

        routes.post("/api/visits/{visit}/other-unit", fleet::giveVisit);
        routes.post("/api/visits/{visit}/photos", photos::add);
        routes.get("/api/photos/{photo}", photos::show);
        routes.post("/api/photos/{photo}/removal", photos::remove);

        routes.get("/api/depots", depots::list);
        routes.post("/api/depots", depots::save);
        routes.post("/api/depots/hours", depots::hours);
        routes.get("/api/technicians", technicians::list);
        routes.post("/api/technicians", technicians::save);
        routes.get("/api/business", business::show);
        routes.post("/api/business", business::save);
        routes.get("/api/business/logo", business::showLogo);
        routes.post("/api/business/logo", business::saveLogo);
        routes.delete("/api/business/logo", business::removeLogo);

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
