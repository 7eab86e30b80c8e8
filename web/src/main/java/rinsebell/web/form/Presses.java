package rinsebell.web.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rinsebell.floor.product.Directions;

/** Every press that pages and programs can make, by the resource and the last part of its address. */
public final class Presses {
    /** The press of a resource that has no further part in its address, such as {@code POST /visits}. */
    public static final String PLAIN = "";

    /** The press of an address that ends in a number, such as {@code POST /staff/7}. */
    public static final String CHANGE = "change";

    private final Map<Name, PressForm> forms = new LinkedHashMap<>();

    private Presses() {}

    /**
     * @param resource the first part of the address
     * @param press the last part of the address; empty for none
     */
    public record Name(String resource, String press) {}

    /** @param shelf what a salon can take over at once, to try things out */
    public static Presses all(List<Directions> shelf) {
        var presses = new Presses();
        VisitForms.enter(presses);
        HeadForms.enter(presses);
        BowlForms.enter(presses);
        MixtureForm.enter(presses);
        RecipeForms.enter(presses);
        FactForms.enter(presses);
        BellForms.enter(presses);
        SalonForms.enter(presses);
        ProductForms.enter(presses, shelf);
        DayForms.enter(presses);
        return presses;
    }

    void enter(String resource, String press, PressForm form) {
        if (forms.put(new Name(resource, press), form) != null) {
            throw new IllegalStateException("two forms for " + resource + "/" + press);
        }
    }

    /**
     * The form of a press; empty when there is no such press. {@code POST /staff/7}, whose address ends in a number, is
     * the press {@code change} of the resource {@code staff}.
     */
    public Optional<PressForm> find(String resource, String press) {
        return Optional.ofNullable(forms.get(new Name(resource, press)));
    }

    public Set<Name> names() {
        return Set.copyOf(forms.keySet());
    }
}
