package rinsebell.floor.salon;

/** Where a client is: a chair with a number, a basin with a letter, or the bench where people wait. */
public sealed interface Place {
    /** @param number from 1 */
    record Chair(int number) implements Place {}

    /** @param number from 1; shown as a letter, 1 as A */
    record Basin(int number) implements Place {
        public String letter() {
            return String.valueOf((char) ('A' + number - 1));
        }
    }

    record Bench() implements Place {}

    static Place chair(int number) {
        return new Chair(number);
    }

    static Place basin(int number) {
        return new Basin(number);
    }

    Place BENCH = new Bench();
}
