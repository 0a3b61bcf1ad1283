package org.longsummer.chain.visit;

import java.util.Optional;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/** Collects readings one by one; what is never named stays unread. */
public final class ReadingsBuilder {
    private Optional<Temperature> returnDryBulb = Optional.empty();
    private Optional<Moisture> returnMoisture = Optional.empty();
    private Optional<Temperature> supplyDryBulb = Optional.empty();
    private Optional<Temperature> ambientDryBulb = Optional.empty();
    private Optional<RelativeHumidity> ambientHumidity = Optional.empty();
    private Optional<Current> amps = Optional.empty();
    private Optional<Voltage> volts = Optional.empty();
    private Optional<Temperature> condenserEntering = Optional.empty();
    private Optional<Temperature> condenserLeaving = Optional.empty();
    private Optional<Temperature> roomDryBulb = Optional.empty();
    private Optional<Temperature> returnSecondDryBulb = Optional.empty();
    private Optional<Current> fanOnlyAmps = Optional.empty();
    private Optional<Current> startPeak = Optional.empty();
    private Optional<Capacitance> capacitor = Optional.empty();
    private SupplyAt supplyAt = SupplyAt.UNKNOWN;
    private AmbientAt ambientAt = AmbientAt.UNKNOWN;
    private Optional<RunTime> runTime = Optional.empty();

    public ReadingsBuilder() {}

    public ReadingsBuilder(Readings start) {
        returnDryBulb = start.returnDryBulb();
        returnMoisture = start.returnMoisture();
        supplyDryBulb = start.supplyDryBulb();
        ambientDryBulb = start.ambientDryBulb();
        ambientHumidity = start.ambientHumidity();
        amps = start.amps();
        volts = start.volts();
        condenserEntering = start.condenserEntering();
        condenserLeaving = start.condenserLeaving();
        roomDryBulb = start.roomDryBulb();
        returnSecondDryBulb = start.returnSecondDryBulb();
        fanOnlyAmps = start.fanOnlyAmps();
        startPeak = start.startPeak();
        capacitor = start.capacitor();
        supplyAt = start.supplyAt();
        ambientAt = start.ambientAt();
        runTime = start.runTime();
    }

    public ReadingsBuilder returnDryBulb(Temperature value) {
        returnDryBulb = Optional.of(value);
        return this;
    }

    public ReadingsBuilder returnMoisture(Moisture value) {
        returnMoisture = Optional.of(value);
        return this;
    }

    /** Takes it where no other form of humidity was taken before. */
    ReadingsBuilder orReturnMoisture(Moisture value) {
        returnMoisture = returnMoisture.isPresent() ? returnMoisture : Optional.of(value);
        return this;
    }

    public ReadingsBuilder supplyDryBulb(Temperature value) {
        supplyDryBulb = Optional.of(value);
        return this;
    }

    public ReadingsBuilder ambientDryBulb(Temperature value) {
        ambientDryBulb = Optional.of(value);
        return this;
    }

    public ReadingsBuilder ambientHumidity(RelativeHumidity value) {
        ambientHumidity = Optional.of(value);
        return this;
    }

    public ReadingsBuilder amps(Current value) {
        amps = Optional.of(value);
        return this;
    }

    public ReadingsBuilder volts(Voltage value) {
        volts = Optional.of(value);
        return this;
    }

    public ReadingsBuilder condenserEntering(Temperature value) {
        condenserEntering = Optional.of(value);
        return this;
    }

    public ReadingsBuilder condenserLeaving(Temperature value) {
        condenserLeaving = Optional.of(value);
        return this;
    }

    public ReadingsBuilder roomDryBulb(Temperature value) {
        roomDryBulb = Optional.of(value);
        return this;
    }

    public ReadingsBuilder returnSecondDryBulb(Temperature value) {
        returnSecondDryBulb = Optional.of(value);
        return this;
    }

    public ReadingsBuilder fanOnlyAmps(Current value) {
        fanOnlyAmps = Optional.of(value);
        return this;
    }

    public ReadingsBuilder startPeak(Current value) {
        startPeak = Optional.of(value);
        return this;
    }

    public ReadingsBuilder capacitor(Capacitance value) {
        capacitor = Optional.of(value);
        return this;
    }

    public ReadingsBuilder supplyAt(SupplyAt value) {
        supplyAt = value;
        return this;
    }

    public ReadingsBuilder ambientAt(AmbientAt value) {
        ambientAt = value;
        return this;
    }

    public ReadingsBuilder runTime(RunTime value) {
        runTime = Optional.of(value);
        return this;
    }

    public Readings build() {
        return new Readings(returnDryBulb, returnMoisture, supplyDryBulb, supplyAt, ambientDryBulb, ambientAt, ambientHumidity, amps,
                volts, runTime, condenserEntering, condenserLeaving, roomDryBulb, returnSecondDryBulb, fanOnlyAmps, startPeak, capacitor);
    }
}
