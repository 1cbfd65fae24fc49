// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/header_picture.h"

#include <QPointF>
#include <cmath>

#include "viewmodels/house_view_model.h"
#include "viewmodels/percent.h"

namespace wetfront::ui {
namespace {

double mean_of(const HeaderFlow& flow) {
    return in_si(flow.flow) / static_cast<double>(flow.outlets.size());
}

QVariantList bars(const Header& header, const HeaderFlow& flow) {
    QVariantList list;
    for (std::size_t i = 0; i < header.outlets.size(); ++i) {
        list.append(QPointF{header.outlets[i].at / header.length, in_si(flow.outlets[i]) / mean_of(flow)});
    }
    return list;
}

// "+8 %": an outlet's own flow is too small a number for the units in which a pump's is told.
QString against_mean(const Formatter& formatter, const HeaderFlow& flow, VolumeFlow outlet) {
    const double difference = in_si(outlet) / mean_of(flow) - 1.0;
    return (difference < 0.0 ? QStringLiteral("−") : QStringLiteral("+")) +
           whole_percent(formatter, std::abs(difference));
}

QString missing_sentence(const PadBank& bank) {
    QStringList missing;
    const auto ask = [&missing](bool entered, const QString& what) {
        if (!entered) {
            missing.append(what);
        }
    };
    ask(bank.length.has_value(), HouseViewModel::tr("pad length"));
    ask(bank.header_bore.has_value(), HouseViewModel::tr("header bore"));
    ask(bank.outlet_bore.has_value(), HouseViewModel::tr("outlet bore"));
    ask(bank.outlet_spacing.has_value(), HouseViewModel::tr("outlet spacing"));
    return missing.isEmpty() ? QString{}
                             : HouseViewModel::tr("For the flow by outlet, this is missing: %1.")
                                   .arg(missing.join(HouseViewModel::tr(", ")));
}

QString flow_sentence(VisitRecord& record, const PadBank& bank, const BankWater& water) {
    const auto& formatter = record.context().formatter;
    const auto* pump = record.water().pump(bank.pump);
    const auto* evidence = pump == nullptr ? nullptr : pump->flow();
    if (evidence == nullptr || !water.plain) {
        return {};
    }
    return HouseViewModel::tr("%1 into this header, its share of the pump's flow %2; %3 at its inlet.")
        .arg(formatter.text(any(*water.flow)), formatter.text(label_of(evidence->from)),
             formatter.text(any(water.plain->inlet_velocity)));
}

}  // namespace

QVariantMap header_picture(VisitRecord& record, const PadBank& bank) {
    const auto* water = record.water().bank(bank.id);
    if (water == nullptr || !water->header || !water->plain) {
        return {};
    }
    const auto& formatter = record.context().formatter;
    const auto& flow = *water->plain;
    QVariantMap picture{
        {QStringLiteral("pumpOnLeft"), bank.pump_end == PumpEnd::left},
        {QStringLiteral("outlets"), bars(*water->header, flow)},
        {QStringLiteral("inletHead"),
         HouseViewModel::tr("head at the inlet %1").arg(formatter.text(any(flow.inlet_head)))},
        {QStringLiteral("uniformity"), HouseViewModel::tr("low-quarter uniformity %1")
                                           .arg(whole_percent(formatter, flow.uniformity.low_quarter))},
        {QStringLiteral("first"),
         HouseViewModel::tr("first outlet %1").arg(against_mean(formatter, flow, flow.outlets.front()))},
        {QStringLiteral("last"),
         HouseViewModel::tr("last outlet %1").arg(against_mean(formatter, flow, flow.outlets.back()))},
        {QStringLiteral("mean"), HouseViewModel::tr("mean of %1 outlets").arg(flow.outlets.size())},
        {QStringLiteral("lowest"),
         HouseViewModel::tr("lowest outlet %1").arg(against_mean(formatter, flow, flow.lowest))},
        {QStringLiteral("lowQuarter"), HouseViewModel::tr("lowest quarter")},
        {QStringLiteral("barsName"), HouseViewModel::tr("no velocity head regained")}};
    if (water->recovered) {
        picture[QStringLiteral("other")] = bars(*water->header, *water->recovered);
        picture[QStringLiteral("otherName")] = HouseViewModel::tr("all of it regained");
    }
    return picture;
}

QStringList header_words(VisitRecord& record, const PadBank& bank) {
    const auto& formatter = record.context().formatter;
    QStringList words;
    const auto add = [&words](const QString& sentence) {
        if (!sentence.isEmpty()) {
            words.append(sentence);
        }
    };
    add(missing_sentence(bank));
    const auto* water = record.water().bank(bank.id);
    if (water == nullptr) {
        return words;
    }
    if (water->header && !water->flow) {
        add(HouseViewModel::tr(
            "For the flow by outlet, a flow is missing: measure it (Conditions), or enter the head at the "
            "header's inlet or the pump's curve."));
    }
    add(flow_sentence(record, bank, *water));
    if (water->plain && water->recovered) {
        add(HouseViewModel::tr(
                "The real header lies between the bars and the dashed line. Christiansen's coefficient %1.")
                .arg(whole_percent(formatter, water->plain->uniformity.christiansen)));
    }
    if (water->does_not_fill) {
        add(QString::fromStdString(water->does_not_fill->text()));
    }
    QStringList assumed;
    for (const auto& each : water->assumed) {
        assumed.append(formatter.text(each));
    }
    if (water->plain && !assumed.isEmpty()) {
        add(HouseViewModel::tr("Assumed: %1.").arg(assumed.join(HouseViewModel::tr(", "))));
    }
    for (const auto& note : water->notes) {
        add(formatter.text(note));
    }
    return words;
}

}  // namespace wetfront::ui
