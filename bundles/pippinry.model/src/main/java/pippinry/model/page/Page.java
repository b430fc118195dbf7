package pippinry.model.page;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.zip.CRC32C;

/**
 * Up to 512 rows with neighbouring ids as one array of bytes: column by column, each value as its distance from the
 * column's least, in as few bytes as the page's greatest distance needs (frame of reference; Goldstein, Ramakrishnan and
 * Shaft 1998, Compressing relations and indexes, 14th International Conference on Data Engineering, 370-379). A column
 * that is alike in all rows takes no bytes a row. Immutable; reading a cell needs no unpacking.
 *
 * <p>The bytes are also the page's form on disk. They begin with a sum (CRC-32C) over the rest, then which table and which
 * page of it they are, so that damage and mix-ups show.
 */
public final class Page {

    /** Rows of a full page; a row's place in its page is its id modulo this. */
    public static final int ROWS = 512;

    private static final int SUM = 0;
    private static final int TABLE = 4;
    private static final int NUMBER = 8;
    private static final int EXTENT = 12;
    private static final int HOLES = 14;
    private static final int HEAD = 15;
    private static final int PRESENT_LENGTH = ROWS / 8;
    private static final int COLUMN_HEAD = 9;

    private final byte[] bytes;
    private final int[] starts;
    private final long[] leasts;
    private final int extent;
    private final boolean holes;

    private Page(byte[] bytes, int columns) {
        ByteBuffer in = buffer(bytes);
        this.bytes = bytes;
        this.extent = in.getShort(EXTENT);
        this.holes = in.get(HOLES) != 0;
        this.starts = new int[columns + 1];
        this.leasts = new long[columns];
        in.position(columnHeads());
        int start = columnHeads() + columns * COLUMN_HEAD;
        for (int column = 0; column < columns; column++) {
            starts[column] = start;
            start += extent * in.get();
            leasts[column] = in.getLong();
        }
        starts[columns] = start;
    }

    /**
     * @param table the table's name
     * @param cells by column and place; those of rows that are not there are not looked at
     * @param present by place, at least one
     */
    public static Page pack(String table, int number, long[][] cells, boolean[] present) {
        int extent = extent(present);
        boolean holes = count(present, extent) < extent;
        Packing[] packings = new Packing[cells.length];
        int length = HEAD + (holes ? PRESENT_LENGTH : 0) + cells.length * COLUMN_HEAD;
        for (int column = 0; column < cells.length; column++) {
            packings[column] = Packing.of(cells[column], present, extent);
            length += packings[column].width() * extent;
        }
        ByteBuffer out = buffer(new byte[length]);
        out.putInt(TABLE, table.hashCode()).putInt(NUMBER, number).putShort(EXTENT, (short) extent);
        out.put(HOLES, (byte) (holes ? 1 : 0)).position(HEAD);
        if (holes) {
            putPresent(out, present);
        }
        for (Packing packing : packings) {
            out.put((byte) packing.width()).putLong(packing.least());
        }
        for (int column = 0; column < cells.length; column++) {
            packings[column].write(cells[column], present, extent, out);
        }
        out.putInt(SUM, sum(out.array()));
        return new Page(out.array(), cells.length);
    }

    /**
     * A page as it was on disk.
     *
     * @param bytes as {@link #bytes()} gave them; they must not be changed afterwards
     * @throws IllegalArgumentException if they are damaged or not this page
     */
    public static Page of(String table, int number, int columns, byte[] bytes) {
        if (bytes.length < HEAD + columns * COLUMN_HEAD || buffer(bytes).getInt(SUM) != sum(bytes)) {
            throw new IllegalArgumentException("a page has a wrong sum");
        }
        if (buffer(bytes).getInt(TABLE) != table.hashCode() || buffer(bytes).getInt(NUMBER) != number) {
            throw new IllegalArgumentException("a page stands in the wrong place");
        }
        Page page = new Page(bytes, columns);
        if (page.starts[columns] != bytes.length) {
            throw new IllegalArgumentException("a page has other columns");
        }
        return page;
    }

    private static ByteBuffer buffer(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int sum(byte[] bytes) {
        CRC32C crc = new CRC32C();
        crc.update(bytes, TABLE, bytes.length - TABLE);
        return (int) crc.getValue();
    }

    private static int extent(boolean[] present) {
        int extent = present.length;
        while (!present[extent - 1]) {
            extent--;
        }
        return extent;
    }

    private static int count(boolean[] present, int extent) {
        int count = 0;
        for (int place = 0; place < extent; place++) {
            count += present[place] ? 1 : 0;
        }
        return count;
    }

    private static void putPresent(ByteBuffer out, boolean[] present) {
        byte[] bits = new byte[PRESENT_LENGTH];
        for (int place = 0; place < ROWS; place++) {
            bits[place >> 3] |= (byte) (present[place] ? 1 << (place & 7) : 0);
        }
        out.put(bits);
    }

    private int columnHeads() {
        return HEAD + (holes ? PRESENT_LENGTH : 0);
    }

    /** The page's form on disk; not to be changed. */
    public byte[] bytes() {
        return bytes;
    }

    /** The place after the last row. */
    public int extent() {
        return extent;
    }

    /** How many rows are there. */
    public int rows() {
        int rows = 0;
        for (int place = 0; place < extent; place++) {
            rows += has(place) ? 1 : 0;
        }
        return rows;
    }

    /** Whether there is a row in this place. */
    public boolean has(int place) {
        return place < extent && (!holes || (bytes[HEAD + (place >> 3)] >> (place & 7) & 1) != 0);
    }

    /** The packed cell of a row that is there. */
    public long cell(int column, int place) {
        int width = (starts[column + 1] - starts[column]) / extent;
        int at = starts[column] + place * width;
        long distance = 0;
        for (int i = width - 1; i >= 0; i--) {
            distance = distance << 8 | bytes[at + i] & 0xff;
        }
        return leasts[column] + distance;
    }
}
