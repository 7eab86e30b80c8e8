package rinsebell.app.press;

import java.nio.file.Path;
import rinsebell.app.RunningSalon;

/** A running salon on whose floor every press has something to be about. */
record ExampleSalon(RunningSalon salon, Sender sender, PressExamples examples) implements AutoCloseable {

    static ExampleSalon open(Path folder) {
        RunningSalon salon = new RunningSalon(folder);
        Sender sender = new Sender(salon);
        return new ExampleSalon(salon, sender, new PressExamples(new ExampleFloor(sender).ids()));
    }

    /** The address of an example on the pages. */
    String page(DescribedPress press) {
        return examples.address(press.path());
    }

    /** The address of an example for programs. */
    String api(DescribedPress press) {
        return "/api" + page(press);
    }

    @Override
    public void close() {
        salon.close();
    }
}
