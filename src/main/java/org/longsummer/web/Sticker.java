package org.longsummer.web;

import io.nayuki.qrcodegen.QrCode;

/** The code on a unit's sticker (ISO/IEC 18004), drawn as SVG so that it prints sharp at any size. */
final class Sticker {
    /** The quiet zone that readers need around the code, modules. */
    private static final int QUIET = 4;

    private Sticker() {}

    /** Medium error correction: readable with about 15 % of it lost to sun and scratches. */
    static String svg(String address) {
        QrCode code = QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
        StringBuilder modules = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    modules.append('M').append(x + QUIET).append(',').append(y + QUIET).append("h1v1h-1z");
                }
            }
        }
        int side = code.size + 2 * QUIET;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + side + " " + side + "\" shape-rendering=\"crispEdges\">"
                + "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/><path d=\"" + modules + "\" fill=\"#000\"/></svg>";
    }
}
