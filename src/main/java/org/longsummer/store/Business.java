package org.longsummer.store;

import java.util.Arrays;
import java.util.Optional;

/**
 * Whose paper it is, for all that is printed; texts are empty when nobody gave them.
 *
 * @param name of the business
 * @param address over several lines
 * @param telephone as it is to be printed
 * @param licenceNumber as the law asks for it
 * @param logo its picture
 */
public record Business(String name, String address, String telephone, String licenceNumber, Optional<Picture> logo) {
    /** Nobody said anything. */
    public static final Business UNKNOWN = new Business("", "", "", "", Optional.empty());

    /** Whether it says the same, byte for byte of its picture. */
    boolean isSameAs(Business other) {
        return new Business(name, address, telephone, licenceNumber, Optional.empty())
                .equals(new Business(other.name, other.address, other.telephone, other.licenceNumber, Optional.empty()))
                && logo.map(Picture::contentType).equals(other.logo.map(Picture::contentType))
                && Arrays.equals(logo.map(Picture::bytes).orElse(null), other.logo.map(Picture::bytes).orElse(null));
    }

    /**
     * A picture.
     *
     * @param contentType as its bytes say
     * @param bytes of the file
     */
    public record Picture(String contentType, byte[] bytes) {}
}
