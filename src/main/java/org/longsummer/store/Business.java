package org.longsummer.store;

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

    /**
     * A picture.
     *
     * @param contentType as its bytes say
     * @param bytes of the file
     */
    public record Picture(String contentType, byte[] bytes) {}
}
