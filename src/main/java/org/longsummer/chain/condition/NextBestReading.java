package org.longsummer.chain.condition;

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
        LOOK_AT_FILTER("Look at the filter", 1, "whether it is only the filter"),
        LOOK_AT_COILS("Look at both coils", 4, "whether dirt is the reason"),
        CONDENSER_LEAVING("Read the air leaving the condenser at three points", 4, "whether the condenser gets its air"),
        ROOM_AIR("Read the air in the middle of the room", 2, "whether cold air leaks into the return"),
        FAN_ONLY_AMPS("Read the amps with the fan alone on high", 4, "whether the fan motor drags"),
        CAPACITOR("Have the run capacitor's microfarads measured, power isolated and the capacitor discharged", 15,
                "whether the run capacitor is weak"),
        AMPS("Read the running amps around one conductor", 4, "which side the fault is on");

        private final String phrase;
        private final int minutes;
        private final String settles;

        Kind(String phrase, int minutes, String settles) {
            this.phrase = phrase;
            this.minutes = minutes;
            this.settles = settles;
        }

        public String phrase() {
            return phrase;
        }

        public int minutes() {
            return minutes;
        }

        public String settles() {
            return settles;
        }
    }
}
