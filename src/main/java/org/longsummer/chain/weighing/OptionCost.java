package org.longsummer.chain.weighing;

import java.util.List;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/**
 * What one option is expected to cost to the horizon, in today's money; {@code now + energy + breakdown + laterWork + afterwards} is
 * {@code expected}.
 *
 * @param option keep, clean, repair or replace
 * @param works the works it is made of, most worthwhile first; empty for keeping
 * @param now price of the works with their call-out, or of the new unit less salvage
 * @param energy what it draws and the nights given back while it is weak, until something is done
 * @param breakdown quitting in season: emergency, lost nights, the part or the new unit, times its chance
 * @param laterWork remedies of what somebody finds later, times their chance
 * @param afterwards what the machine loses of its worth until the horizon, and what runs after a later work or breakdown
 * @param expected the sum
 * @param spread standard deviation of the sum over what is not known: the state, and whether it quits
 * @param cures probability that the works cure what is wrong; 0 for keeping
 * @param quitsInSeason probability of quitting before the season that is open, or the next one, closes
 */
public record OptionCost(Option option, List<Work> works, Money now, Money energy, Money breakdown, Money laterWork, Money afterwards,
        Money expected, Money spread, double cures, double quitsInSeason) {}
