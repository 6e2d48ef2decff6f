package org.wetside.web.density;

import java.util.List;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Sheet;

/**
 * Model of the page of all pictures.
 *
 * @param sheet the sheet
 * @param pictures by name
 * @param form what is wrong with a file that was sent
 */
public record PicturesPage(Sheet sheet, List<PictureView> pictures, FilledForm form) {}
