package rinsebell.web.form;

import rinsebell.web.view.View;

/** Makes the page of one form or list. */
public interface PageForm {
    View page(PageAsk ask);
}
