package org.longsummer.chain.screening;

/** A mistake that leaves a fingerprint in the readings, and what to do about it. */
public enum Mistake {
    NOTHING_TO_JUDGE("neither a split nor amps were read", "Read return and supply air, or amps."),
    CELSIUS_TYPED("looks like degrees Celsius in a box for degrees Fahrenheit", "Type it again in degrees Fahrenheit, or choose °C."),
    FAHRENHEIT_TYPED("looks like degrees Fahrenheit in a box for degrees Celsius", "Type it again in degrees Celsius, or choose °F."),
    SWAPPED("supply air is warmer than return air: the two look swapped", "Swap the two readings, or read again."),
    DECIMAL_SLIP("looks like a slip of the decimal point", "Type the reading again."),
    IMPOSSIBLE("is not possible here", "Read again."),
    CLAMP_AROUND_BOTH("is almost nothing: is the clamp around both conductors?", "Put it around one."),
    CLAMP_AROUND_CORD("is too much for this unit: is the clamp around the cord of the whole vehicle?",
            "Put it around one conductor of this unit, or switch everything else off."),
    TEN_TURNS("looks like ten times the current: a slip of the decimal point, or the ×10 loop of a line splitter?",
            "Use the ×1 loop, or type the reading again."),
    HOLD_LEFT_ON("is near a start peak: was MAX hold left on?", "Clear the hold and read the running amps."),
    NOT_SETTLED("is too short: the unit has not settled", "Let it run 15 minutes, then read again."),
    BARELY_SETTLED("is short; the answer is less sure", "15 minutes is better."),

    FAN_LOW("was low: split and amps are judged on high", "Set the fan to high, wait 10 minutes, read again."),
    TOO_COOL("is below 60 °F (15.6 °C): the coil may freeze and nothing can be judged", "Read again on a warmer day."),
    COOL_DAY("is below 75 °F (23.9 °C): makers want it warmer; the answer is less sure", "A warmer day is better."),
    TOO_HOT("is beyond what the published curves reach; the answer is less sure", "Read again in milder weather if it matters."),
    VOLTS_LOW("is below what a compressor is built for", "Find the reason for the low voltage before judging the unit."),
    VOLTS_HIGH("is above what a compressor is built for",
            "Switch the unit off and have the supply checked by a qualified person; if the plate gives another voltage, enter that."),
    RETURN_COLD("is far from a room that needs cooling; the answer is less sure", "Warm the room up first if you can."),
    RETURN_HOT("is hotter than a room in use; the answer is less sure", "Let the room cool down and read again if it matters."),
    HUMIDITY_DOUBTFUL("is outside what a room shows while it is cooled; weighed with the weather", "Read the humidity away from the cold air."),
    HUMIDITY_IMPOSSIBLE("does not go with the air temperature; worked out from the weather instead",
            "Wet the wick, wait for the probe, read again; percent in the box for percent."),
    THERMOMETERS_DISAGREE("is not what the first thermometer shows at the same place; one of the two is off",
            "Hold both in crushed ice and water, 32 °F (0 °C), and read with the one that is right."),
    INVERTER("an averaging meter misreads an inverter's current", "Use a true-RMS meter, or shore power."),
    COIL_ICED("the coil is iced: the readings show the ice, not the unit", "Let it thaw, dry it, find why it iced, then read again."),
    COMPRESSOR_OFF("the fan runs and the compressor does not",
            "Isolate the power, then check thermostat, capacitor, overload and wiring by a qualified person."),
    FITS_NOTHING("fit neither a sound unit nor any known fault", "Check the clamp and both probes, then read again."),
    SAVED_TWICE("is the same as an earlier one and counts once", "Withdraw one of the two."),
    VARIABLE_SPEED("a variable-speed unit's amps cannot be judged; the split can", "Nothing to do.");

    private final String seen;
    private final String remedy;

    Mistake(String seen, String remedy) {
        this.seen = seen;
        this.remedy = remedy;
    }

    /** What was seen: the rest of a sentence that begins with the box and its value, or a clause of its own. */
    public String seen() {
        return seen;
    }

    /** What to do, as a sentence. */
    public String remedy() {
        return remedy;
    }

    /** The box is the subject of what was seen: "Amps 0.1 A is almost nothing". */
    boolean isSaidOfTheBox() {
        return switch (this) {
            case NOTHING_TO_JUDGE, SWAPPED, INVERTER, COIL_ICED, COMPRESSOR_OFF, VARIABLE_SPEED -> false;
            default -> true;
        };
    }

    /** The value in the box is wrong, so nothing may be made of it; the other mistakes leave a true value in other circumstances. */
    public boolean spoilsTheReading() {
        return switch (this) {
            case CELSIUS_TYPED, FAHRENHEIT_TYPED, SWAPPED, DECIMAL_SLIP, IMPOSSIBLE, CLAMP_AROUND_BOTH, CLAMP_AROUND_CORD, TEN_TURNS,
                    HOLD_LEFT_ON, HUMIDITY_IMPOSSIBLE -> true;
            default -> false;
        };
    }
}
