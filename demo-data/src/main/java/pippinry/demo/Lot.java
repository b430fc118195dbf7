package pippinry.demo;

/** A seed lot on its way from fruit to pots. */
final class Lot {

    private final String code;
    private int full;
    private int sown;
    private int emerged;
    private int potted;

    Lot(String code, int full) {
        this.code = code;
        this.full = full;
    }

    String code() {
        return code;
    }

    int full() {
        return full;
    }

    void lose(int seeds) {
        full -= seeds;
    }

    void sow() {
        sown = full;
    }

    int sown() {
        return sown;
    }

    void emerge(int seedlings) {
        emerged = seedlings;
    }

    int emerged() {
        return emerged;
    }

    void pot(int seedlings) {
        potted = seedlings;
    }

    int potted() {
        return potted;
    }
}
