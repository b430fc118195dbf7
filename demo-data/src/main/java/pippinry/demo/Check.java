package pippinry.demo;

/**
 * The check character of a tag number: ISO/IEC 7064:2003, Information technology - Security techniques - Check character
 * systems, pure system MOD 37-2, over the letters and digits of the number.
 */
final class Check {

    private static final String SYMBOLS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

    private Check() {}

    static char of(String number) {
        int sum = 0;
        for (char symbol : number.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
            int value = SYMBOLS.indexOf(symbol);
            if (value >= 0 && symbol != '*') {
                sum = (sum + value) * 2 % 37;
            }
        }
        return SYMBOLS.charAt((38 - sum) % 37);
    }

    /** Numbers whose check would be a star are not given out. */
    static boolean isStar(String number) {
        return of(number) == '*';
    }
}
