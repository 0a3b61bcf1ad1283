package org.longsummer.files;

import java.util.List;

/**
 * The columns of a kind of file.
 *
 * @param known all that are read
 * @param required of each list at least one must be there
 */
record Layout(List<String> known, List<List<String>> required) {}
