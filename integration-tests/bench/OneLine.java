/** The least that a Java program can do: the first half of the yardstick for starting. */
final class OneLine {

    private OneLine() {}

    public static void main(String[] args) {
        System.out.println("one line");
    }
}
