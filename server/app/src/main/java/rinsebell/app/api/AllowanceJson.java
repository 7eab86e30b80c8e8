package rinsebell.app.api;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Limits;
import rinsebell.web.Codes;

/** Whether each cover and heat is allowed, and for how many minutes at most; without a number it has no limit of its own. */
final class AllowanceJson {
    private AllowanceJson() {}

    static Map<String, Map<String, Object>> covers(Limits limits) {
        return each(Cover.class, limits::cover);
    }

    static Map<String, Map<String, Object>> heats(Limits limits) {
        return each(Heat.class, limits::heat);
    }

    private static <T extends Enum<T>> Map<String, Map<String, Object>> each(
            Class<T> all, Function<T, Allowance> allowances) {
        Map<String, Map<String, Object>> json = new LinkedHashMap<>();
        EnumSet.allOf(all).forEach(one -> json.put(Codes.of(one), of(allowances.apply(one))));
        return json;
    }

    private static Map<String, Object> of(Allowance allowance) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("allowed", allowance.allowed());
        if (allowance.upTo() != null) {
            json.put("upTo", allowance.upTo().toMinutes());
        }
        return json;
    }
}
