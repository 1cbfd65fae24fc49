// SPDX-License-Identifier: Apache-2.0
#include "sheet/words.h"

namespace wetfront {

Message label_of(TimingKind kind) {
    switch (kind) {
        case TimingKind::fill:
            return WF_TEXT("Fill");
        case TimingKind::wet_through:
            return WF_TEXT("Wet-through");
        case TimingKind::run_off:
            return WF_TEXT("Run-off");
        case TimingKind::dry_out:
            return WF_TEXT("Dry-out");
        case TimingKind::wet_off:
            return WF_TEXT("Wet start: pump off");
        case TimingKind::wet_return:
            return WF_TEXT("Wet start: drip returns");
    }
    return {};
}

Message label_of(NotUsed why) {
    switch (why) {
        case NotUsed::set_aside:
            return WF_TEXT("not used: set aside");
        case NotUsed::unverified:
            return WF_TEXT("not used: unverified, across a restart or a start that nobody saw");
        case NotUsed::not_positive:
            return WF_TEXT("not used: marks in the wrong order");
        case NotUsed::too_long:
            return WF_TEXT("not used: longer than a day, a mark is missing");
        case NotUsed::too_quick:
            return WF_TEXT("not used: sooner than water can do it, or a second press");
        case NotUsed::pressed_again:
            return WF_TEXT("not used: pressed again, the first press counts");
        case NotUsed::upper_bound:
            return WF_TEXT("not used: already there when seen, an upper bound");
        case NotUsed::pads_not_dry:
            return WF_TEXT("not used: the pad was not dry at the start, so it is too short");
        case NotUsed::fans_off:
            return WF_TEXT("not used: the fans were off");
        case NotUsed::fans_not_stated:
            return WF_TEXT("not used: whether the fans ran was not stated");
    }
    return {};
}

Message label_of(StartedBy who) {
    switch (who) {
        case StartedBy::me_here:
            return WF_TEXT("technician here");
        case StartedBy::me_then_walk:
            return WF_TEXT("technician, walked");
        case StartedBy::helper_signal:
            return WF_TEXT("helper on signal");
        case StartedBy::controller:
            return WF_TEXT("timer at a minute");
    }
    return {};
}

Message label_of(SpreadFrom origin) {
    switch (origin) {
        case SpreadFrom::readings:
            return WF_TEXT("these readings");
        case SpreadFrom::pooled:
            return WF_TEXT("like readings of this visit");
        case SpreadFrom::assumed:
            return WF_TEXT("assumed");
    }
    return {};
}

Message label_of(PumpEnd end) {
    switch (end) {
        case PumpEnd::left:
            return WF_TEXT("left end");
        case PumpEnd::right:
            return WF_TEXT("right end");
    }
    return {};
}

Message label_of(TimerKind kind) {
    switch (kind) {
        case TimerKind::trimmed:
            return WF_TEXT("trimmed by temperature");
        case TimerKind::fixed_interval:
            return WF_TEXT("fixed interval");
        case TimerKind::on_demand:
            return WF_TEXT("on demand");
    }
    return {};
}

Message label_of(SensorKind kind) {
    switch (kind) {
        case SensorKind::temperature:
            return WF_TEXT("Temperature sensor");
        case SensorKind::humidity:
            return WF_TEXT("Humidity sensor");
    }
    return {};
}

Message label_of(SensorPlace place) {
    switch (place) {
        case SensorPlace::outside:
            return WF_TEXT("outside");
        case SensorPlace::in_house:
            return WF_TEXT("in the house");
        case SensorPlace::behind_pad:
            return WF_TEXT("behind the pad");
    }
    return {};
}

Message label_of(CountsFrom start) {
    switch (start) {
        case CountsFrom::pump_start:
            return WF_TEXT("pump start");
        case CountsFrom::full_header:
            return WF_TEXT("a full header");
    }
    return {};
}

Message method_of(TimingKind kind) {
    switch (kind) {
        case TimingKind::fill:
            return WF_TEXT("Fill: from pump start to water at the far end of the header.");
        case TimingKind::wet_through:
            return WF_TEXT(
                "Wet-through: from pump start, pad dry, to an even drip under the pad farthest from the "
                "pump.");
        case TimingKind::run_off:
            return WF_TEXT("Run-off: from pump stop to the end of dripping.");
        case TimingKind::dry_out:
            return WF_TEXT("Dry-out: from pump stop to the first dry patch on the pad face, fans running.");
        case TimingKind::wet_off:
            return WF_TEXT("Wet start, pump off: from a stop while the far end drips to the next start.");
        case TimingKind::wet_return:
            return WF_TEXT("Wet start, drip returns: from that start to an even drip at the far end.");
    }
    return {};
}

}  // namespace wetfront
