// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/strip_map.h"

namespace wetfront::ui {

QVariantMap strip_map(const CycleStrip& strip, const Formatter& formatter) {
    QVariantMap map{{"label", formatter.text(strip.label)},
                    {"period", strip.period_s},
                    {"continuous", strip.continuous},
                    {"on", strip.on_s},
                    {"fill", strip.fill_s}};
    const auto add = [&](const char* key, const std::optional<double>& value) {
        if (value) {
            map.insert(QLatin1String(key), *value);
        }
    };
    add("ceiling", strip.ceiling_s);
    add("wetThrough", strip.wet_through_s);
    add("runOff", strip.run_off_s);
    add("dryPatch", strip.dry_patch_s);
    add("lowestLevel", strip.lowest_level);
    add("dripReturns", strip.drip_returns_s);
    return map;
}

}  // namespace wetfront::ui
