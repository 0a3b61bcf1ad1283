package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.web.RunningServer.Answer;

/** Outlook, weighing, prices, quotes, planned work and the owner's sheet over real HTTP. */
class MoneyApiTest {
    private static final Clock SUMMER = Clock.fixed(Instant.parse("2026-07-20T18:00:00Z"), ZoneOffset.UTC);

    private RunningServer server;
    private String visited;
    private String bare;

    @BeforeEach
    void start() {
        server = new RunningServer(SUMMER);
        visited = server.addUnit("Heron 7", "Ferrow Flats");
        bare = server.addUnit("Heron 9", "Lake Orrin");
        server.saveVisit(visited, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Answer post(String path, String... namesAndTexts) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            texts.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return server.post(path, Map.of("boxes", texts));
    }

    private JsonNode figure(String query, String key) {
        for (JsonNode figure : server.get("api/prices" + query).body().path("figures")) {
            if (figure.path("key").asText().equals(key)) {
                return figure;
            }
        }
        throw new AssertionError("no figure " + key);
    }

    private JsonNode weighing(String unit) {
        return server.get("api/units/" + unit + "/weighing").body();
    }

    @Test
    void whatLiesAheadIsSaidAndDrawn() {
        JsonNode ahead = server.get("api/units/" + visited + "/ahead").body();
        assertEquals("2026-07-20", ahead.path("on").asText());
        assertTrue(ahead.path("fan").size() > 10, "in season there are points every fifteen days");
        assertEquals("2026-07-18", ahead.path("fan").get(0).path("on").asText());
        for (JsonNode day : ahead.path("fan")) {
            assertTrue(day.path("limit").path("low").asDouble() <= day.path("limit").path("high").asDouble());
        }
        assertTrue(ahead.path("quitting").asText().contains("From its condition and its age"), ahead::toString);
        JsonNode alone = server.get("api/units/" + bare + "/ahead").body();
        assertEquals(0, alone.path("fan").size());
        assertTrue(alone.path("quitting").asText().contains("from the life curve alone"), alone::toString);
        assertTrue(alone.path("limit").asText().contains("no date can be given"), alone::toString);
    }

    @Test
    void fourOptionsStandSideBySideAndTheirPartsAddUp() {
        JsonNode weighing = weighing(visited);
        assertEquals(4, weighing.path("options").size());
        long keeping = weighing.path("options").get(0).path("expected").path("minor").asLong();
        for (JsonNode option : weighing.path("options")) {
            long sum = 0;
            for (JsonNode part : option.path("parts")) {
                sum += part.path("amount").path("minor").asLong();
            }
            assertEquals(option.path("expected").path("minor").asLong(), sum, "exact in minor units");
            assertEquals(keeping - sum, option.path("cheaper_than_keeping").path("minor").asLong());
        }
        long calls = weighing.path("options").get(1).path("parts").get(0).path("amount").path("minor").asLong();
        JsonNode there = server.get("api/units/" + visited + "/weighing?on_site=yes").body();
        assertTrue(there.path("on_site").asBoolean());
        assertTrue(there.path("options").get(2).path("parts").get(0).path("amount").path("minor").asLong()
                < weighing.path("options").get(2).path("parts").get(0).path("amount").path("minor").asLong(), "no call-out: " + calls);
        assertFalse(weighing.path("flips").isEmpty());
        assertTrue(weighing.path("cautions").toString().contains("Local codes"));
    }

    @Test
    void pricesAreChangedForTheFleetADepotAndAUnitAndSaySo() {
        assertEquals("default", figure("?unit=" + visited, "call_out").path("wider_from").asText());
        assertEquals(200, post("api/prices", "call_out", "95,50").status());
        assertEquals(200, post("api/prices?depot=Ferrow%20Flats", "call_out", "80", "occupancy", "75").status());
        assertEquals(200, post("api/prices?unit=" + visited, "replacement", "2,150").status());
        assertEquals("95.5", figure("", "call_out").path("own").asText());
        JsonNode callOut = figure("?unit=" + visited, "call_out");
        assertEquals("80", callOut.path("wider").asText());
        assertEquals("depot", callOut.path("wider_from").asText());
        assertEquals("95.5", figure("?unit=" + bare, "call_out").path("wider").asText());
        assertEquals("75", figure("?unit=" + visited, "occupancy").path("wider").asText());
        assertEquals("2150", figure("?unit=" + visited, "replacement").path("own").asText());
        assertEquals(215_000, weighing(visited).path("options").get(3).path("parts").get(0).path("amount").path("minor").asLong());
        assertEquals(200, post("api/prices?unit=" + visited, "replacement", "").status());
        assertEquals("", figure("?unit=" + visited, "replacement").path("own").asText());
    }

    @Test
    void wrongPricesAreNamedAllAtOnceAndNothingIsChanged() {
        Answer refused = post("api/prices", "call_out", "-3", "shop_rate", "12.345", "occupancy", "140", "life_early", "20", "currency", "dollars");
        assertEquals(422, refused.status());
        String said = refused.body().toString();
        for (String field : new String[] {"call_out", "shop_rate", "occupancy", "life_early", "currency"}) {
            assertTrue(said.contains("\"" + field + "\""), field + ": " + said);
        }
        assertEquals("", figure("", "life_early").path("own").asText());
        assertEquals(422, post("api/prices?depot=Ferrow%20Flats", "currency", "NOK").status());
        assertEquals(404, server.get("api/prices?depot=Nowhere").status());
    }

    @Test
    void aPriceListGoesOutAsAFileAndComesBackTheSame() throws Exception {
        post("api/prices", "currency", "nok", "call_out", "1200", "energy_price", "1.385", "occupancy", "62.5");
        HttpClient client = HttpClient.newHttpClient();
        String file = client.send(HttpRequest.newBuilder(URI.create(server.address("api/prices/file"))).build(), BodyHandlers.ofString()).body();
        assertTrue(file.contains("currency,NOK") && file.contains("call_out,1200") && file.contains("occupancy,0.625"), file);
        String changed = file.replace("call_out,1200", "call_out,1300");
        HttpRequest back = HttpRequest.newBuilder(URI.create(server.address("api/prices/file"))).header("Content-Type", "text/csv")
                .POST(BodyPublishers.ofString(changed)).build();
        assertEquals(200, client.send(back, BodyHandlers.ofString()).statusCode());
        assertEquals("1300", figure("", "call_out").path("own").asText());
        assertEquals("1.385", figure("", "energy_price").path("own").asText());
        HttpRequest wrong = HttpRequest.newBuilder(URI.create(server.address("api/prices/file"))).header("Content-Type", "text/csv")
                .POST(BodyPublishers.ofString("key,value\ncall_out,lots\n")).build();
        assertEquals(422, client.send(wrong, BodyHandlers.ofString()).statusCode());
        assertEquals("1300", figure("", "call_out").path("own").asText());
    }

    @Test
    void aQuoteTakesTheListsPlaceAndIsForgottenAgain() {
        assertEquals(422, post("api/units/" + visited + "/quote", "price", "1,750").status());
        JsonNode weighed = post("api/units/" + visited + "/quote", "work", "unit_replaced", "price", "1,750", "offered_by", "Harbour Cooling",
                "offered_on", "2026-07-19").body();
        assertEquals("1750 USD", weighed.path("quote").path("price").path("text").asText());
        assertEquals(175_000, weighed.path("options").get(3).path("parts").get(0).path("amount").path("minor").asLong());
        assertTrue(server.delete("api/units/" + visited + "/quote").body().path("quote").isMissingNode());
        assertEquals(190_000, weighing(visited).path("options").get(3).path("parts").get(0).path("amount").path("minor").asLong());
    }

    @Test
    void workIsPlannedListedSummedAndEnded() {
        Answer refused = post("api/planned-work", "unit", "nobody");
        assertEquals(422, refused.status());
        assertTrue(refused.body().toString().contains("works") && refused.body().toString().contains("planned_for"), refused.body()::toString);
        for (int twice = 0; twice < 2; twice++) {
            assertEquals(201, post("api/planned-work", "id", "w1", "unit", visited, "works", "filter,condenser_coil", "planned_for", "2026-08-01").status());
        }
        post("api/planned-work", "id", "w2", "unit", visited, "works", "capacitor", "planned_for", "2026-07-28", "price", "120", "note", "bring 45 µF");
        post("api/planned-work", "id", "w3", "unit", bare, "works", "unit_replaced", "planned_for", "2026-09-01");
        JsonNode all = server.get("api/planned-work").body();
        assertEquals(3, all.path("plans").size());
        JsonNode first = all.path("plans").get(0);
        assertEquals("w2", first.path("id").asText(), "soonest first");
        assertEquals(12_000, first.path("costs").path("minor").asLong());
        assertEquals("bring 45 µF", first.path("note").asText());
        assertEquals(34_500, all.path("plans").get(1).path("costs").path("minor").asLong(), "filter, one and a half hours, one call");
        JsonNode sum = all.path("depots").get(0);
        assertEquals("Ferrow Flats", sum.path("depot").asText());
        assertEquals(first.path("costs").path("minor").asLong() + all.path("plans").get(1).path("costs").path("minor").asLong(),
                sum.path("costs").path("minor").asLong());
        assertEquals(1, server.get("api/planned-work?depot=Lake%20Orrin").body().path("plans").size());
        assertEquals(2, server.get("api/planned-work?unit=" + visited).body().path("plans").size());
        assertEquals(200, server.post("api/planned-work/w2/done", Map.of()).status());
        assertEquals(404, server.post("api/planned-work/w2/drop", Map.of()).status());
        assertEquals(200, server.post("api/planned-work/w3/drop", Map.of()).status());
        assertEquals(1, server.get("api/planned-work").body().path("plans").size());
    }

    private String pdf(String unit, String system, int pages) throws IOException {
        byte[] bytes = server.bytes("api/units/" + unit + "/sheet.pdf?system=" + system);
        try (PdfReader reader = new PdfReader(bytes)) {
            assertEquals(pages, reader.getNumberOfPages());
            return new PdfTextExtractor(reader).getTextFromPage(1).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theSheetSaysItOnOnePageOfPaper() throws IOException {
        post("api/business", "name", "Dune Cooling", "address", "4 Pier Road\nFerrow", "telephone", "555 0100", "licence_number", "RC 4471");
        String said = pdf(visited, "us", 1);
        for (String words : new String[] {"Dune Cooling", "4 Pier Road", "Licence RC 4471", "Heron 7", "Checked on 18 July 2026 by Ines", "What we recommend",
            "judged once only", "Advice from readings", "maker’s manual"}) {
            assertTrue(said.contains(words), words + " is missing in: " + said);
        }
    }

    @Test
    void theSheetOfAUnitWithoutAmpsOrWithoutAnyVisitSaysWhatItCannotTell() throws IOException {
        Map<String, String> kitchen = new HashMap<>(RunningServer.soundVisit("2026-07-19T11:30"));
        kitchen.remove("amps");
        kitchen.remove("volts");
        String noAmps = server.addUnit("Heron 11", "Ferrow Flats");
        server.saveVisit(noAmps, "k1", kitchen);
        assertTrue(pdf(noAmps, "si", 1).contains("Amps were not read"));
        assertTrue(pdf(bare, "si", 1).contains("rests on its age alone"));
    }

    @Test
    void aLinkOpensTheSheetAndItsPdf() {
        String address = server.post("api/units/" + visited + "/sheet-links", Map.of()).body().path("address").asText();
        Caller owner = new Caller(server).with("Origin", null).with("Authorization", "Sheet " + address.substring(address.indexOf('#') + 1));
        assertEquals("Heron 7", owner.get("/api/sheet").body().path("sheet").path("label").asText());
        assertTrue(owner.get("/api/sheet.pdf").text().startsWith("%PDF"));
    }
}
