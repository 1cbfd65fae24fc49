// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/signature_view_model.h"

namespace wetfront::ui {
namespace {

QString line_of(const Person& person) {
    const auto name = QString::fromStdString(person.name);
    return person.role.empty()
               ? name
               : SignatureViewModel::tr("%1, %2").arg(name, QString::fromStdString(person.role));
}

QStringList texts_of(const std::vector<Stroke>& strokes) {
    QStringList texts;
    for (const auto& stroke : strokes) {
        texts.append(QString::fromStdString(stroke.text()));
    }
    return texts;
}

QVariantMap map_of(const Person& person, const std::vector<Stroke>& strokes, const QString& state) {
    return {{QStringLiteral("line"), line_of(person)},
            {QStringLiteral("state"), state},
            {QStringLiteral("drawn"), !strokes.empty()},
            {QStringLiteral("strokes"), texts_of(strokes)}};
}

}  // namespace

SignatureViewModel::SignatureViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent}, record_{record} {
    connect(&record_, &VisitRecord::changed, this, &SignatureViewModel::sheet_changed);
}

QVariantList SignatureViewModel::signers() const {
    const auto& formatter = record_.context().formatter;
    const auto& visit = record_.file().visit;
    QVariantList list;
    for (const auto& [person, at, strokes] : visit.signatures) {
        list.append(map_of(person, strokes, tr("Signed %1").arg(formatter.date_and_time(at))));
    }
    for (std::size_t i = 0; i < persons().size() && !visit.is_signed(); ++i) {
        const auto drawn = drawn_.find(i);
        list.append(drawn != drawn_.end() ? map_of(persons()[i], drawn->second.strokes,
                                                   tr("Drawn %1, goes onto the sheet once it is signed")
                                                       .arg(formatter.date_and_time(drawn->second.at)))
                                          : map_of(persons()[i], {}, {}));
    }
    return list;
}

QString SignatureViewModel::leftOut() const {
    if (persons().empty() || record_.frozen()) {
        return {};
    }
    QStringList without;
    for (std::size_t i = 0; i < persons().size(); ++i) {
        if (!drawn_.contains(i)) {
            without.append(line_of(persons()[i]));
        }
    }
    QStringList said;
    if (!without.isEmpty()) {
        said.append(tr("No signature is drawn by: %1. The sheet keeps a line for signing by hand.")
                        .arg(without.join(QStringLiteral("; "))));
    }
    if (persons().size() < 2) {
        said.append(tr(
            "Nobody is named who signs for the grower: left out here, a line on the sheet is kept for him."));
    }
    return said.join(QLatin1Char(' '));
}

QString SignatureViewModel::name() const {
    return open() ? QString::fromStdString(persons()[*at_field_].name) : QString{};
}
QString SignatureViewModel::role() const {
    return open() ? QString::fromStdString(persons()[*at_field_].role) : QString{};
}
QStringList SignatureViewModel::strokes() const {
    return texts_of(on_field_);
}
QString SignatureViewModel::state() const {
    return on_field_.empty() ? tr("Nothing is drawn yet.")
                             : tr("Lines drawn: %1.").arg(QString::number(on_field_.size()));
}

void SignatureViewModel::draw(int person) {
    const auto place = static_cast<std::size_t>(person);
    if (person < 0 || place >= persons().size() || record_.frozen()) {
        return;
    }
    at_field_ = place;
    const auto before = drawn_.find(place);
    on_field_ = before != drawn_.end() ? before->second.strokes : std::vector<Stroke>{};
    problem_.clear();
    emit fieldChanged();
}

void SignatureViewModel::addStroke(const QString& points) {
    auto stroke = Stroke::parse(points.toStdString(), "stroke");
    if (!open()) {
        return;
    }
    if (!stroke || on_field_.size() == most_strokes ||
        points_of(on_field_) + stroke.value().points.size() > most_drawn_points) {
        problem_ =
            tr("The field is full: the last line was not taken. Take the signature as it is, or clear it.");
    } else {
        on_field_.push_back(std::move(stroke).value());
        problem_.clear();
    }
    emit fieldChanged();
}

void SignatureViewModel::clear() {
    on_field_.clear();
    problem_.clear();
    emit fieldChanged();
}

void SignatureViewModel::take() {
    if (!open()) {
        return;
    }
    if (!is_signature(on_field_)) {
        problem_ = tr("Too little for a signature. Sign across the field, or cancel.");
        emit fieldChanged();
        return;
    }
    drawn_[*at_field_] = {on_field_, record_.context().clock.wall_now()};
    notice_.clear();
    close_field();
    emit changed();
}

void SignatureViewModel::cancel() {
    if (open()) {
        close_field();
    }
}

void SignatureViewModel::close_field() {
    at_field_.reset();
    on_field_.clear();
    problem_.clear();
    emit fieldChanged();
}

void SignatureViewModel::takeOff(int person) {
    if (drawn_.erase(static_cast<std::size_t>(person)) > 0) {
        emit changed();
    }
}

std::vector<Signature> SignatureViewModel::signatures_with(std::size_t signer, WallTime at) const {
    std::vector<Signature> signatures;
    for (const auto& [person, drawn] : drawn_) {
        if (person != signer) {
            signatures.push_back({persons()[person], drawn.at, drawn.strokes});
        }
    }
    const auto own = drawn_.find(signer);
    signatures.push_back(
        {persons()[signer], at, own != drawn_.end() ? own->second.strokes : std::vector<Stroke>{}});
    return signatures;
}

void SignatureViewModel::sheet_changed() {
    const bool drawn_for_another = !drawn_.empty() || !on_field_.empty();
    drawn_.clear();
    cancel();
    if (record_.file().visit.is_signed()) {
        notice_.clear();
    } else if (drawn_for_another) {
        notice_ =
            tr("The visit or its sheet was changed: what had been drawn was for the sheet before, and is "
               "taken off. Sign again.");
    }
    emit changed();
}

}  // namespace wetfront::ui
