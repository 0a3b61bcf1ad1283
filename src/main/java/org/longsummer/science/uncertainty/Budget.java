package org.longsummer.science.uncertainty;

import java.util.List;

/**
 * An uncertainty budget: independent components and their combination (JCGM 100:2008, eq. 10).
 *
 * @param components lines of the budget
 */
public record Budget(List<Component> components) {
    /** No lines kept, where nobody will ask for them. */
    public static final Budget NOT_KEPT = new Budget(List.of());

    public Budget {
        components = List.copyOf(components);
    }

    /** Combined variance of the logarithm of the result. */
    public double variance() {
        double sum = 0;
        for (Component component : components) {
            sum += component.contribution() * component.contribution();
        }
        return sum;
    }

    /** Combined variance of the components from one source. */
    public double variance(Component.Source source) {
        double sum = 0;
        for (Component component : components) {
            if (component.source() == source) {
                sum += component.contribution() * component.contribution();
            }
        }
        return sum;
    }

    public double standardUncertainty() {
        return Math.sqrt(variance());
    }
}
