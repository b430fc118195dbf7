package pippinry.model.page;

import java.nio.ByteBuffer;

/**
 * How a column of a page is written.
 *
 * @param width bytes of each value, 0 to 8
 */
record Packing(long least, int width) {

    static Packing of(long[] cells, boolean[] present, int extent) {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (int place = 0; place < extent; place++) {
            if (present[place]) {
                least = Math.min(least, cells[place]);
                most = Math.max(most, cells[place]);
            }
        }
        int bits = Long.SIZE - Long.numberOfLeadingZeros(most - least);
        return new Packing(least, (bits + 7) / 8);
    }

    void write(long[] cells, boolean[] present, int extent, ByteBuffer out) {
        for (int place = 0; place < extent; place++) {
            long distance = present[place] ? cells[place] - least : 0;
            for (int i = 0; i < width; i++) {
                out.put((byte) (distance >>> 8 * i));
            }
        }
    }
}
