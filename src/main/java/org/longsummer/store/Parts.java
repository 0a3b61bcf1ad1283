package org.longsummer.store;

import java.util.ArrayList;
import java.util.List;

/** A long list in parts that one query takes. */
final class Parts {
    private Parts() {}

    /** In its order, each part but the last of the given size; views of the list. */
    static <T> List<List<T>> of(List<T> all, int size) {
        List<List<T>> parts = new ArrayList<>();
        for (int from = 0; from < all.size(); from += size) {
            parts.add(all.subList(from, Math.min(from + size, all.size())));
        }
        return parts;
    }
}
