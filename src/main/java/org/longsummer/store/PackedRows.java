package org.longsummer.store;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Rows as bytes, to be written by a statement later. Only for this run: it is no file format. */
final class PackedRows extends Rows {
    private static final byte NONE = 0;
    private static final byte WHOLE = 1;
    private static final byte REAL = 2;
    private static final byte TEXT = 3;

    private final DataOutput out;

    /** @param sql with each name once, as {@code :name} */
    PackedRows(String sql, DataOutput out) {
        super(sql);
        this.out = out;
    }

    @Override
    void take(Object[] row) {
        try {
            out.writeByte(row.length);
            for (Object value : row) {
                write(value);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Object value) throws IOException {
        if (value == null) {
            out.writeByte(NONE);
        } else if (value instanceof Integer || value instanceof Long) {
            out.writeByte(WHOLE);
            out.writeLong(((Number) value).longValue());
        } else if (value instanceof Double number) {
            out.writeByte(REAL);
            out.writeDouble(number);
        } else {
            byte[] letters = ((String) value).getBytes(StandardCharsets.UTF_8);
            out.writeByte(TEXT);
            out.writeInt(letters.length);
            out.write(letters);
        }
    }

    /** The values of the next row. */
    static Object[] read(DataInput in) throws IOException {
        Object[] row = new Object[in.readByte()];
        for (int i = 0; i < row.length; i++) {
            row[i] = value(in);
        }
        return row;
    }

    private static Object value(DataInput in) throws IOException {
        return switch (in.readByte()) {
            case NONE -> null;
            case WHOLE -> in.readLong();
            case REAL -> in.readDouble();
            default -> {
                byte[] letters = new byte[in.readInt()];
                in.readFully(letters);
                yield new String(letters, StandardCharsets.UTF_8);
            }
        };
    }
}
