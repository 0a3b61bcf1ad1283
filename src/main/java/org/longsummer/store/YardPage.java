package org.longsummer.store;

import java.util.List;
import java.util.Optional;

/**
 * A page of the yard.
 *
 * @param rows in the order that was asked for
 * @param next where the next page goes on; absent on the last one
 */
public record YardPage(List<Standing> rows, Optional<After> next) {

    /**
     * Behind which row a page goes on. What lies before is not read again, so that the last page is as quick as the first.
     *
     * @param value of the column that orders
     * @param unitId of the row
     */
    public record After(String value, String unitId) {}
}
