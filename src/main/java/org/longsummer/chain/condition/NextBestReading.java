package org.longsummer.chain.condition;

import org.longsummer.chain.screening.Field;

/**
 * The optional reading that would tell most for the minutes it costs.
 *
 * @param kind what to read or look at
 * @param minutes what it costs
 * @param settles what it would settle, as a sentence's end
 */
public record NextBestReading(Kind kind, int minutes, String settles) {

    /** Optional readings and looks; minutes are common practice. */
    public enum Kind {
        LOOK_AT_FILTER("Look at the filter", Field.FILTER, 1, "whether it is only the filter"),
        LOOK_AT_COILS("Look at both coils", Field.COIL, 4, "whether dirt is the reason"),
        CONDENSER_LEAVING("Read the air leaving the condenser at three points", Field.CONDENSER_LEAVING, 4, "whether the condenser gets its air"),
        ROOM_AIR("Read the air in the middle of the room", Field.ROOM_DRY_BULB, 2, "whether cold air leaks into the return"),
        FAN_ONLY_AMPS("Read the amps with the fan alone on high", Field.FAN_ONLY_AMPS, 4, "whether the fan motor drags"),
        CAPACITOR("Have the run capacitor's microfarads measured, power isolated and the capacitor discharged", Field.CAPACITOR, 15,
                "whether the run capacitor is weak"),
        AMPS("Read the running amps around one conductor", Field.AMPS, 4, "which side the fault is on");

        private final String phrase;
        private final Field field;
        private final int minutes;
        private final String settles;

        Kind(String phrase, Field field, int minutes, String settles) {
            this.phrase = phrase;
            this.field = field;
            this.minutes = minutes;
            this.settles = settles;
        }

        public String phrase() {
            return phrase;
        }

        /** The box that it goes into. */
        public Field field() {
            return field;
        }

        public int minutes() {
            return minutes;
        }

        public String settles() {
            return settles;
        }
    }
}
