package rinsebell.web.view;

import java.util.List;

/**
 * What to do first after burning, swelling, severe itch or hot foil.
 *
 * @param call when to call emergency services
 */
public record FirstAid(String title, List<String> steps, String call) {}
