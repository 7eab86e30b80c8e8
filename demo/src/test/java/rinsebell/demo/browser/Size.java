package rinsebell.demo.browser;

/**
 * The sizes of screen that a salon looks at, in CSS pixels.
 *
 * @param name of the device
 */
record Size(String name, int width, int height) {
    static final Size PHONE = new Size("phone", 390, 844);
    static final Size TABLET = new Size("tablet", 1180, 820);
    static final Size WALL = new Size("wall", 1920, 1080);

    @Override
    public String toString() {
        return name;
    }
}
