package org.longsummer.chain.condition;


/**
 * The optional reading that would tell most for the minutes it costs.
 *
 * @param kind what to read or look at
 * @param minutes what it costs
 * @param settles what it would settle, as a sentence's end
 */
public record NextBestReading(Kind kind, int minutes, String settles) {

    /** Optional readings and looks. */
    public enum Kind {
        LOOK_AT_FILTER("Look at the filter"),
        LOOK_AT_CONDENSER_COIL("Look at the condenser coil"),
        CONDENSER_LEAVING("Read the air leaving the condenser at three points"),
        ROOM_AIR("Read the air in the middle of the room"),
        FAN_ONLY_AMPS("Read the amps with the fan alone on high"),
        START_PEAK("Read the start peak with MAX hold"),
        CAPACITOR("Measure the run capacitor's microfarads"),
        AMPS("Read the running amps"),
        CLEAN_AND_READ_AGAIN("Clean or replace the filter and read again");

        private final String phrase;

        Kind(String phrase) {
            this.phrase = phrase;
        }

        public String phrase() {
            return phrase;
        }
    }
}
