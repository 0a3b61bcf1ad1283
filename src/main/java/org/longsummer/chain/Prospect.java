package org.longsummer.chain;

import java.util.Optional;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.outlook.Outlook;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.weighing.Advice;

/**
 * A verdict with what lies ahead.
 *
 * @param verdict what the visit and the history say
 * @param standing what is left possible
 * @param limit when the unit falls below what its owner can accept
 * @param advice what is worth doing; absent when no prices were given
 */
public record Prospect(Verdict verdict, Standing standing, Outlook.Limit limit, Optional<Advice> advice) {}
