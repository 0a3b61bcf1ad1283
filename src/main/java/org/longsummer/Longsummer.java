package org.longsummer;

/** The command line. */
public final class Longsummer {
    private Longsummer() {}

    public static void main(String[] args) {
        System.out.println("Longsummer");
    }
}
