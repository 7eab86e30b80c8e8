package rinsebell.app.door;

/**
 * How much of the server strangers get, so that a salon's own devices find it free whatever strangers do. All numbers are
 * the house's own.
 *
 * @param connections how many connections of strangers may be open; a page of the way in takes six at most
 * @param atOnce how many of their requests may be under way: each may hold a thread, of which a server has 250
 * @param atOnceFromOne how many of these may come from one address
 * @param burst how much one address may ask for at once, in requests; a page with its files is thirty
 * @param perSecond how much of that it gets back in a second
 */
record CrowdLimits(int connections, int atOnce, int atOnceFromOne, int burst, int perSecond) {

    static CrowdLimits usual() {
        return new CrowdLimits(256, 96, 48, 400, 10);
    }
}
