// SPDX-License-Identifier: Apache-2.0
#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <qrcodegen/qrcodegen.hpp>

#include "charts/bank_painter.h"
#include "charts/signature_painter.h"
#include "charts/strip_painter.h"
#include "print/blocks.h"
#include "print/marks.h"
#include "print/type.h"

namespace wetfront::ui {
namespace {

void hairline_above(QPainter& painter, const QRectF& rect, bool first, bool /*last*/) {
    if (first) {
        painter.setPen(QPen{QColor{0x90, 0x90, 0x90}, 0.4 * pt});
        painter.drawLine(rect.topLeft(), rect.topRight());
    }
}

Row strip_row(const CycleStrip& strip, double end_s, std::optional<double> present_s, double labels,
              const Measure& measure) {
    Row row;
    auto text = text_lines(measure.formatter.text(strip.label), Face::strong, labels - 8.0 * pt);
    for (const Message& note : {note_of(strip), pad_note_of(strip)}) {
        if (!note.empty()) {
            append(text, text_lines(measure.formatter.text(note), Face::small, labels - 8.0 * pt));
        }
    }
    row.cells.push_back({0.0, std::move(text)});
    if (is_drawable(strip)) {
        const QSizeF size{measure.width - labels, 36.0 * pt};
        row.cells.push_back(
            {labels,
             {{size.height(), [=](QPainter& painter, QPointF top_left) {
                   paint_strip(painter, QRectF{top_left, size}, strip, end_s, present_s, paper_ink(0.8 * pt));
               }}}});
    }
    row.space_before = 3.0 * pt;
    row.keep_with_next = true;
    return row;
}

// The numbers of the axis are made here, while the reader's language is at hand; the painting keeps only
// them.
Row axis_row(double end_s, double labels, const Measure& measure) {
    Row row;
    const QSizeF size{measure.width - labels, 15.0 * pt};
    const Formatter formatter = measure.formatter;
    row.cells.push_back({labels, {{size.height(), [=](QPainter& painter, QPointF top_left) {
                                       paint_time_axis(
                                           painter, QRectF{top_left, size}, end_s, paper_ink(0.8 * pt),
                                           font_of(Face::small),
                                           [&](const Message& text) { return formatter.text(text); });
                                   }}}});
    row.space_before = 1.0 * pt;
    return row;
}

Rows legend_rows(const Measure& measure) {
    constexpr std::size_t across = 3;
    const double width = measure.width / across;
    const QSizeF sign_size{17.0 * pt, 8.5 * pt};
    Rows rows;
    for (std::size_t i = 0; i < all_strip_signs.size(); ++i) {
        if (i % across == 0) {
            rows.emplace_back();
            rows.back().padding = 0.8 * pt;
            rows.back().keep_with_next = i + across < all_strip_signs.size();
        }
        const double x = static_cast<double>(i % across) * width;
        const StripSign sign = all_strip_signs[i];
        rows.back().cells.push_back(
            {x, {{leading_of(Face::small), [=](QPainter& painter, QPointF top_left) {
                      const double drop = (leading_of(Face::small) - sign_size.height()) / 2.0;
                      paint_sign(painter, QRectF{top_left + QPointF{0.0, drop}, sign_size}, sign,
                                 paper_ink(0.7 * pt));
                  }}}});
        const double indent = sign_size.width() + 5.0 * pt;
        rows.back().cells.push_back({x + indent, text_lines(measure.formatter.text(label_of(sign)),
                                                            Face::small, width - indent - 6.0 * pt)});
    }
    if (!rows.empty()) {
        rows.front().space_before = 5.0 * pt;
    }
    return rows;
}

/// Of the field that was signed on, on paper: 25 mm.
constexpr double drawn_height = 72.0 * pt;

Message said_below(const SheetSignatures::Line& line) {
    if (line.name.empty()) {
        return WF_TEXT("Name, signature, date");
    }
    return line.drawn.empty() ? Message{WF_TEXT("Signed %1"), {line.signed_at}}
                              : Message{WF_TEXT("Signed %1, drawn on the screen"), {line.signed_at}};
}

std::string joined(const std::vector<Message>& messages, const Formatter& formatter) {
    QStringList texts;
    for (const auto& message : messages) {
        texts.append(formatter.text(message));
    }
    return texts.join(QLatin1Char(' ')).toStdString();
}

}  // namespace

Rows rows_of(const SheetTimeline& timeline, const Measure& measure) {
    Rows rows;
    Row title;
    title.cells.push_back(
        {0.0, text_lines(measure.formatter.text(timeline.title), Face::strong, measure.width)});
    title.space_before = 7.0 * pt;
    title.keep_with_next = true;
    rows.push_back(std::move(title));

    const double labels = 0.24 * measure.width;
    const double end_s = axis_end_s(timeline.strips);
    const auto present_s = present_setting_s(timeline.strips);
    for (const auto& strip : timeline.strips) {
        rows.push_back(strip_row(strip, end_s, present_s, labels, measure));
    }
    if (end_s > 0.0) {
        rows.push_back(axis_row(end_s, labels, measure));
        rows.back().keep_with_next = true;
        auto legend = legend_rows(measure);
        std::move(legend.begin(), legend.end(), std::back_inserter(rows));
    }
    rows.back().keep_with_next = false;
    return rows;
}

Rows rows_of(const SheetBanks& banks, const Measure& measure) {
    const double between = 20.0 * pt;
    const double width = (measure.width - between) / 2.0;
    const QSizeF size{width, 96.0 * pt};
    Rows rows;
    for (std::size_t i = 0; i < banks.banks.size(); i += 2) {
        Row names;
        Row drawings;
        Row captions;
        for (std::size_t k = i; k < std::min(i + 2, banks.banks.size()); ++k) {
            const auto& bank = banks.banks[k];
            const double x = static_cast<double>(k - i) * (width + between);
            BankPicture picture;
            picture.pump_on_left = bank.pump_on_left;
            picture.aspect = bank.length_m > 0.0 && bank.height_m > 0.0 ? bank.length_m / bank.height_m : 0.0;
            names.cells.push_back({x, text_lines(measure.formatter.text(bank.name), Face::strong, width)});
            drawings.cells.push_back(
                {x, {{size.height(), [size, picture](QPainter& painter, QPointF top_left) {
                          paint_bank(painter, QRectF{top_left, size}, picture, paper_ink(0.8 * pt));
                      }}}});
            captions.cells.push_back(
                {x, text_lines(measure.formatter.text(bank.caption), Face::small, width)});
        }
        names.space_before = 8.0 * pt;
        names.keep_with_next = true;
        drawings.space_before = 2.0 * pt;
        drawings.keep_with_next = true;
        captions.space_before = 2.0 * pt;
        rows.push_back(std::move(names));
        rows.push_back(std::move(drawings));
        rows.push_back(std::move(captions));
    }
    return rows;
}

Rows rows_of(const SheetFindings& findings, const Measure& measure) {
    const Formatter& formatter = measure.formatter;
    std::vector<QString> words;
    for (const auto& finding : findings.findings) {
        words.push_back(formatter.text(label_of(finding.severity)));
    }
    const double marks = std::max(72.0 * pt, marks_width(words));
    const double width = measure.width - marks;
    Rows rows;
    for (const auto& finding : findings.findings) {
        Row row;
        row.cells.push_back(
            {0.0, {severity_mark(finding.severity, formatter.text(label_of(finding.severity)))}});
        std::vector<Line> lines = text_lines(formatter.text(finding.where), Face::small_strong, width);
        append(lines, text_lines(formatter.text(finding.message), Face::body, width));
        if (!finding.remedy.empty()) {
            append(lines, text_lines(formatter.text(Message{WF_TEXT("Remedy: %1"), {finding.remedy}}),
                                     Face::body, width));
        }
        if (!finding.causes.empty()) {
            append(lines, text_lines(formatter.text(Message{WF_TEXT("Likely, in this order: %1"),
                                                            {joined(finding.causes, formatter)}}),
                                     Face::body, width));
        }
        if (!finding.source.empty()) {
            append(lines, text_lines(formatter.text(Message{WF_TEXT("Source: %1"), {finding.source}}),
                                     Face::small, width));
        }
        row.cells.push_back({marks, std::move(lines)});
        row.space_before = rows.empty() ? 5.0 * pt : 0.0;
        row.padding = 3.0 * pt;
        if (!rows.empty()) {
            row.decoration = hairline_above;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

Rows rows_of(const SheetCautions& cautions, const Measure& measure) {
    const double inset = 8.0 * pt;
    std::vector<QString> words;
    for (const auto& caution : cautions.lines) {
        words.push_back(measure.formatter.text(label_of(caution.word)));
    }
    const double marks = std::max(84.0 * pt, inset + marks_width(words));
    Rows rows;
    for (const auto& caution : cautions.lines) {
        const bool injury = caution.word != SignalWord::notice;
        Row row;
        row.cells.push_back({inset, {signal_mark(injury, measure.formatter.text(label_of(caution.word)))}});
        row.cells.push_back(
            {marks, text_lines(measure.formatter.text(caution.text), Face::body, measure.width - marks)});
        row.space_before = rows.empty() ? 5.0 * pt : 3.0 * pt;
        row.padding = 1.5 * pt;
        // A bar at the left: thick for injury, thin for property.
        row.decoration = [injury](QPainter& painter, const QRectF& rect, bool, bool) {
            painter.fillRect(QRectF{rect.left(), rect.top(), (injury ? 2.4 : 0.7) * pt, rect.height()},
                             Qt::black);
        };
        rows.push_back(std::move(row));
    }
    keep_last_two(rows);
    return rows;
}

Rows rows_of(const SheetSignatures& signatures, const Measure& measure) {
    const double between = 24.0 * pt;
    const double width = (measure.width - between) / 2.0;
    const QSizeF field{static_cast<double>(field_width) / field_height * drawn_height, drawn_height};
    const Line rule{2.0 * pt, [width](QPainter& painter, QPointF top_left) {
                        painter.setPen(QPen{Qt::black, 0.6 * pt});
                        painter.drawLine(top_left, top_left + QPointF{width, 0.0});
                    }};
    Rows rows;
    for (std::size_t i = 0; i < signatures.lines.size(); i += 2) {
        // A row each: what is drawn stands on its line, and both lines at one height, however long a name is.
        Row roles;
        Row drawings;
        Row below;
        for (std::size_t k = i; k < std::min(i + 2, signatures.lines.size()); ++k) {
            const auto& line = signatures.lines[k];
            const double x = static_cast<double>(k - i) * (width + between);
            roles.cells.push_back(
                {x, text_lines(measure.formatter.text(line.role), Face::small_strong, width)});
            drawings.cells.push_back({x, {gap(26.0 * pt)}});
            if (!line.drawn.empty()) {
                drawings.cells.back().lines = {
                    {field.height(), [field, drawn = line.drawn](QPainter& painter, QPointF top_left) {
                         paint_strokes(painter, QRectF{top_left, field}, drawn, Qt::black, 1.0 * pt);
                     }}};
            }
            std::vector<Line> under{rule};
            append(under, text_lines(QString::fromStdString(line.name), Face::body, width));
            append(under, text_lines(measure.formatter.text(said_below(line)), Face::small, width));
            below.cells.push_back({x, std::move(under)});
        }
        roles.space_before = 8.0 * pt;
        roles.keep_with_next = true;
        drawings.keep_with_next = true;
        rows.push_back(std::move(roles));
        rows.push_back(std::move(drawings));
        rows.push_back(std::move(below));
    }
    keep_last_two(rows);
    return rows;
}

// Level Q mends a quarter of it, dirt and folds; half a millimetre a module is read by any tablet's camera.
Rows rows_of(const SheetCode& code, const Measure& measure) {
    const double module = 0.55 / 25.4 * units_per_inch;
    const auto made = qrcodegen::QrCode::encodeText(code.text.c_str(), qrcodegen::QrCode::Ecc::QUARTILE);
    constexpr int quiet = 4;
    const double side = module * (made.getSize() + 2 * quiet);
    Row row;
    row.cells.push_back({0.0, {{side, [=](QPainter& painter, QPointF top_left) {
                                    QPainterPath dark;
                                    for (int y = 0; y < made.getSize(); ++y) {
                                        for (int x = 0; x < made.getSize(); ++x) {
                                            if (made.getModule(x, y)) {
                                                dark.addRect(
                                                    QRectF{top_left + module * QPointF(x + quiet, y + quiet),
                                                           QSizeF{module, module}});
                                            }
                                        }
                                    }
                                    // One path: a seam between modules would be a light line.
                                    painter.fillPath(dark.simplified(), Qt::black);
                                }}}});
    const double beside = side + 6.0 * pt;
    Cell words_beside{beside, {gap(module * quiet)}};
    for (std::size_t i = 0; i < code.lines.size(); ++i) {
        append(words_beside.lines,
               text_lines(measure.formatter.text(code.lines[i]), i == 0 ? Face::small_strong : Face::small,
                          measure.width - beside));
    }
    row.cells.push_back(std::move(words_beside));
    return {std::move(row)};
}

}  // namespace wetfront::ui
