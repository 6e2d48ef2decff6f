/**
 * Equipment: tanks, thermometers, waters, balance and measures. In: what was typed. Out: the page
 * and its interface. Open {@link org.wetside.web.equipment.EquipmentRoutes} first.
 */
@NullMarked
package org.wetside.web.equipment;

import org.jspecify.annotations.NullMarked;
