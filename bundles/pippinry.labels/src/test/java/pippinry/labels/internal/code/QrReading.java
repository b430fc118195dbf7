package pippinry.labels.internal.code;

import java.util.StringJoiner;

/** Reads a version 1 QR code module by module, written from the standard's placement rules and apart from any library. */
final class QrReading {
    private static final int SIDE = 21;
    private static final int FORMAT_MASK = 0b101010000010010;

    private final boolean[][] dark;

    private QrReading(boolean[][] dark) {
        this.dark = dark;
    }

    static QrReading of(CodePicture picture) {
        boolean[][] dark = new boolean[SIDE][SIDE];
        for (Bar bar : picture.bars()) {
            for (int y = bar.y(); y < bar.y() + bar.height(); y++) {
                for (int x = bar.x(); x < bar.x() + bar.width(); x++) {
                    dark[y][x] = true;
                }
            }
        }
        return new QrReading(dark);
    }

    /** The fifteen format bits beside the upper left finder, most significant first. */
    String format() {
        StringBuilder bits = new StringBuilder();
        for (int x : new int[] {0, 1, 2, 3, 4, 5, 7, 8}) {
            bits.append(dark[8][x] ? '1' : '0');
        }
        for (int y : new int[] {7, 5, 4, 3, 2, 1, 0}) {
            bits.append(dark[y][8] ? '1' : '0');
        }
        return bits.toString();
    }

    int mask() {
        return (Integer.parseInt(format(), 2) ^ FORMAT_MASK) >> 10 & 7;
    }

    static String codeWords(QrReading reading) {
        String bits = reading.bits();
        StringJoiner words = new StringJoiner(" ");
        for (int i = 0; i + 8 <= bits.length(); i += 8) {
            words.add(String.format("%02X", Integer.parseInt(bits.substring(i, i + 8), 2)));
        }
        return words.toString();
    }

    private String bits() {
        StringBuilder bits = new StringBuilder();
        boolean up = true;
        for (int right = SIDE - 1; right > 0; right -= 2) {
            right = right == 6 ? 5 : right;
            for (int step = 0; step < SIDE; step++) {
                int y = up ? SIDE - 1 - step : step;
                appendIfData(bits, y, right);
                appendIfData(bits, y, right - 1);
            }
            up = !up;
        }
        return bits.toString();
    }

    private void appendIfData(StringBuilder bits, int y, int x) {
        boolean finder = y < 9 && x < 9 || y < 9 && x > SIDE - 9 || y > SIDE - 9 && x < 9;
        if (!finder && y != 6 && x != 6) {
            bits.append(dark[y][x] ^ masked(y, x) ? '1' : '0');
        }
    }

    private boolean masked(int i, int j) {
        return switch (mask()) {
            case 0 -> (i + j) % 2 == 0;
            case 1 -> i % 2 == 0;
            case 2 -> j % 3 == 0;
            case 3 -> (i + j) % 3 == 0;
            case 4 -> (i / 2 + j / 3) % 2 == 0;
            case 5 -> i * j % 2 + i * j % 3 == 0;
            case 6 -> (i * j % 2 + i * j % 3) % 2 == 0;
            default -> ((i + j) % 2 + i * j % 3) % 2 == 0;
        };
    }
}
