package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A second implementation, ZXing's decoder, reads from a sticker's modules the address that was written. */
class StickerCrossCheckTest {
    private static final Pattern SIDE = Pattern.compile("viewBox=\"0 0 (\\d+) ");
    private static final Pattern MODULE = Pattern.compile("M(\\d+),(\\d+)h1v1h-1z");
    private static final int QUIET = 4;

    @Test
    void theAddressIsReadBack() throws ReaderException {
        for (String address : List.of("http://127.0.0.1:8115/u/heron-7-front", "https://yard.example.org/air/u/van-112-rear-3fa9c1",
                "https://yard.example.org/u/%E3%82%B7%E3%83%A3%E3%83%88%E3%83%AB-7")) {
            assertEquals(address, new Decoder().decode(modules(Sticker.svg(address))).getText());
        }
    }

    private static BitMatrix modules(String svg) throws NotFoundException {
        Matcher side = SIDE.matcher(svg);
        if (!side.find()) {
            throw NotFoundException.getNotFoundInstance();
        }
        BitMatrix bits = new BitMatrix(Integer.parseInt(side.group(1)) - 2 * QUIET);
        MODULE.matcher(svg).results().forEach(module -> bits.set(Integer.parseInt(module.group(1)) - QUIET, Integer.parseInt(module.group(2)) - QUIET));
        return bits;
    }
}
