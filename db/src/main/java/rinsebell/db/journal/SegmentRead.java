package rinsebell.db.journal;

/**
 * What reading one file of the journal came to.
 *
 * @param end the place behind its last whole press
 * @param wholeBytes the length of the file up to there
 * @param presses how many whole presses it holds
 * @param tail what stands behind them
 */
record SegmentRead(JournalMark end, long wholeBytes, long presses, Tail tail) {

    /**
     * Bytes behind the last whole press: what was being written when the process or the power ended.
     *
     * @param line the number of the first line that is not whole
     * @param reason what is wrong with it; empty if there is no tail
     */
    record Tail(long bytes, long line, String reason) {}

    boolean torn() {
        return tail.bytes() > 0;
    }
}
