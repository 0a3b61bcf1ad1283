package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import org.longsummer.chain.outlook.FaultSign;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.weighing.Caution;
import org.longsummer.chain.weighing.WeighingWording;
import org.longsummer.quantity.Altitude;
import org.longsummer.wire.Boxes;

/** What each fault shows on the instruments, as the core works it out. */
final class SignsApi {

    /**
     * All faults.
     *
     * @param weather in which the changes hold, in words
     * @param cautions for the works that cure them
     */
    record SignsView(String weather, List<SignView> signs, List<String> cautions) {}

    /**
     * One fault at its limit, against the same unit sound.
     *
     * @param fault its word
     * @param toldBy what tells it from others
     * @param cure the work that cures it, in words
     */
    record SignView(String fault, String phrase, String splitChange, String ampsChange, String coolingChange, String toldBy, String cure) {
        private static SignView of(FaultSign sign) {
            return new SignView(Boxes.word(sign.fault()), sign.fault().phrase(), OutlookWording.change(sign.split()), OutlookWording.change(sign.amps()),
                    OutlookWording.change(sign.capacity()), sign.fault().toldBy(), WeighingWording.works(List.of(sign.fault().cure())));
        }
    }

    void show(Context request) {
        List<FaultSign> signs = FaultSign.all(TypicalWeather.faultModel(Altitude.SEA_LEVEL));
        request.json(new SignsView(TypicalWeather.words(Reader.system(request)), signs.stream().map(SignView::of).toList(),
                Caution.of(signs.stream().map(sign -> sign.fault().cure()).distinct().toList()).stream().map(Caution::text).toList()));
    }
}
