package org.wetside.web.pairing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.web.page.Sheet;

/**
 * Model of the page on which a screen is told to trust this machine.
 *
 * @param sheet the sheet
 * @param name of the certificate, as the phone will list it
 * @param fingerprint SHA-256, four pairs a part
 * @param until the day it ends
 * @param secure where to go on when it is trusted
 * @param drawing the address of this page for a phone's camera; null on the phone itself
 * @param address the same in letters
 */
public record CertificatePage(
    Sheet sheet,
    String name,
    List<String> fingerprint,
    String until,
    String secure,
    @Nullable QrDrawing drawing,
    String address) {}
