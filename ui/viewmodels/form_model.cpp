// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/form_model.h"

#include <algorithm>

#include "base/numbers.h"
#include "records/range_words.h"
#include "records/record_text.h"

namespace wetfront::ui {
namespace {

QString type_name(FormField::Type type) {
    switch (type) {
        case FormField::Type::quantity:
            return QStringLiteral("quantity");
        case FormField::Type::number:
            return QStringLiteral("number");
        case FormField::Type::text:
            return QStringLiteral("text");
        case FormField::Type::choice:
            return QStringLiteral("choice");
        case FormField::Type::time_of_day:
            return QStringLiteral("time");
        case FormField::Type::yes_no:
            return QStringLiteral("yesno");
    }
    return {};
}

QString text_of(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// "12.5gpm" to "12.5" and "gpm".
std::pair<QString, QString> split_entry(const QString& entry) {
    qsizetype end = 0;
    while (end < entry.size() && (entry[end].isDigit() || QStringLiteral("+-.,").contains(entry[end]))) {
        ++end;
    }
    return {entry.left(end), entry.mid(end).trimmed()};
}

// To three digits behind the point, as controllers hold no finer steps.
QString number_in_own_unit(const FormField& field, const AnyQuantity& quantity, const QLocale& locale) {
    const auto number = print_number(number_in(*field.own_unit, quantity.si), 3);
    return QString::fromStdString(number).replace(QLatin1Char('.'), locale.decimalPoint());
}

// A unit as people read it, whichever way it was typed.
QString shown_unit(const FormField& field, const QString& typed) {
    if (field.kind) {
        for (const auto& unit : units_of(*field.kind)) {
            if (typed == text_of(unit.symbol)) {
                return text_of(unit.display);
            }
        }
    }
    return typed;
}

}  // namespace

FormModel::FormModel(const Formatter& formatter, QObject* parent)
    : QAbstractListModel{parent}, formatter_{formatter} {}

int FormModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> FormModel::roleNames() const {
    return {{KeyRole, "key"},
            {LabelRole, "label"},
            {WhyRole, "why"},
            {TypeRole, "type"},
            {NumberRole, "number"},
            {UnitRole, "unit"},
            {EntryRole, "entry"},
            {RangeRole, "range"},
            {WarningRole, "warning"},
            {MinusRole, "minus"},
            {TypedNumberRole, "typedNumber"},
            {TypedUnitRole, "typedUnit"},
            {UnitsRole, "units"},
            {ChoicesRole, "choices"},
            {BesideRole, "beside"},
            {OwnRole, "own"},
            {FixedRole, "fixed"}};
}

QString FormModel::shown(const FormField& field) const {
    switch (field.type) {
        case FormField::Type::quantity: {
            const auto quantity = field.quantity();
            return !quantity                   ? QString{}
                   : field.own_unit != nullptr ? number_in_own_unit(field, *quantity, formatter_.locale())
                                               : formatter_.number(*quantity);
        }
        case FormField::Type::choice:
        case FormField::Type::yes_no: {
            const QString value = field.entry();
            for (const auto& [choice, words] : field.choices) {
                if (choice == value) {
                    return words;
                }
            }
            return value;
        }
        case FormField::Type::number:
        case FormField::Type::text:
        case FormField::Type::time_of_day:
            return field.entry();
    }
    return {};
}

QString FormModel::range(const FormField& field) const {
    QString text = field.own_range;
    if (text.isEmpty() && field.kind) {
        text = formatter_.text(range_words(field.about, *field.kind, formatter_.units()));
    }
    text.replace(QLatin1Char('.'), formatter_.locale().decimalPoint());
    return field.about.kept && !text.isEmpty()
               ? tr("usual: %1; anything else is kept as found, and marked").arg(text)
               : text;
}

QStringList FormModel::units(const FormField& field) const {
    QStringList list;
    if (!field.kind) {
        return list;
    }
    if (field.own_unit != nullptr) {
        return {text_of(field.own_unit->display)};
    }
    const auto add = [&](UnitSystem system, Scale scale) {
        const QString display = text_of(display_unit(*field.kind, system, scale).unit->display);
        if (!list.contains(display)) {
            list.append(display);
        }
    };
    const auto own = formatter_.units();
    add(own, field.about.scale);
    add(own == UnitSystem::us ? UnitSystem::si : UnitSystem::us, field.about.scale);
    if (*field.kind == Kind::duration) {
        add(own, Scale::normal);
        add(own, Scale::coarse);
    }
    return list;
}

QVariant FormModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto& field = fields_[static_cast<std::size_t>(index.row())];
    switch (role) {
        case KeyRole:
            return text_of(field.about.key);
        case LabelRole: {
            const QString label =
                field.own_label.isEmpty() ? formatter_.text(Message{field.about.label}) : field.own_label;
            return field.title.isEmpty() ? label : tr("%1: %2").arg(field.title, label);
        }
        case WhyRole:
            return *field.about.why == '\0' ? QString{} : formatter_.text(Message{field.about.why});
        case TypeRole:
            return type_name(field.type);
        case NumberRole:
            return shown(field);
        case UnitRole: {
            const auto quantity = field.type == FormField::Type::quantity ? field.quantity() : std::nullopt;
            return !quantity                   ? QString{}
                   : field.own_unit != nullptr ? text_of(field.own_unit->display)
                                               : formatter_.unit(*quantity);
        }
        case EntryRole:
            return field.entry();
        case TypedNumberRole:
            if (const auto quantity = field.own_unit != nullptr ? field.quantity() : std::nullopt) {
                return number_in_own_unit(field, *quantity, QLocale::c());
            }
            return split_entry(field.entry()).first;
        case TypedUnitRole: {
            if (field.own_unit != nullptr) {
                return text_of(field.own_unit->display);
            }
            const QString unit = split_entry(field.entry()).second;
            const auto usual = units(field);
            return unit.isEmpty() && !usual.isEmpty() ? usual.front() : shown_unit(field, unit);
        }
        case RangeRole:
            return range(field);
        case WarningRole: {
            const auto quantity = field.about.kept && field.kind ? field.quantity() : std::nullopt;
            return quantity && !in_range(field.about, quantity->si)
                       ? tr("outside what is usual: kept as found")
                       : QString{};
        }
        case MinusRole:
            return field.kind && (field.about.kept || range(field).startsWith(QLatin1Char('-')));
        case UnitsRole:
            return units(field);
        case ChoicesRole: {
            QVariantList list;
            for (const auto& [value, words] : field.choices) {
                list.append(QVariantMap{{"value", value}, {"text", words}});
            }
            return list;
        }
        case BesideRole:
            return field.beside ? field.beside() : QString{};
        case OwnRole:
            return field.own ? field.own() : QString{};
        case FixedRole:
            return field.fixed;
        default:
            return {};
    }
}

void FormModel::set_fields(std::vector<FormField> fields) {
    beginResetModel();
    fields_ = std::move(fields);
    endResetModel();
    emit refreshed();
}

void FormModel::change_fields(std::vector<FormField> fields) {
    const auto same = [](const FormField& one, const FormField& other) {
        return std::string_view{one.about.key} == other.about.key && one.title == other.title;
    };
    const auto before = std::mismatch(fields_.begin(), fields_.end(), fields.begin(), fields.end(), same);
    const auto head = before.first - fields_.begin();
    const auto behind = std::mismatch(fields_.rbegin(), std::make_reverse_iterator(before.first),
                                      fields.rbegin(), std::make_reverse_iterator(before.second), same);
    const auto tail = behind.first - fields_.rbegin();
    const auto old_end = static_cast<std::ptrdiff_t>(fields_.size()) - tail;
    const auto new_end = static_cast<std::ptrdiff_t>(fields.size()) - tail;
    if (old_end > head) {
        beginRemoveRows({}, static_cast<int>(head), static_cast<int>(old_end) - 1);
        fields_.erase(fields_.begin() + head, fields_.begin() + old_end);
        endRemoveRows();
    }
    if (new_end > head) {
        beginInsertRows({}, static_cast<int>(head), static_cast<int>(new_end) - 1);
        fields_ = std::move(fields);
        endInsertRows();
    } else {
        fields_ = std::move(fields);
    }
    refresh();
}

QString FormModel::summary() const {
    std::ptrdiff_t asked = 0;
    std::ptrdiff_t entered = 0;
    bool grows = false;
    for (const auto& field : fields_) {
        const bool filled = !field.entry().isEmpty();
        entered += filled ? 1 : 0;
        asked += field.spare ? 0 : 1;
        grows = grows || field.spare;
    }
    if (entered == 0) {
        return tr("nothing entered");
    }
    return grows ? tr("%1 entered").arg(entered)
                 : tr("%1 of %2 entered").arg(QString::number(entered), QString::number(asked));
}

void FormModel::refresh() {
    if (!fields_.empty()) {
        emit dataChanged(index(0), index(count() - 1));
    }
    emit refreshed();
}

// The refusals that a person meets most, in his language and units; the core tells the others in English.
QString FormModel::refused(const FormField& field, const QString& text, const Error& error) const {
    const bool bad = error.kind == Error::Kind::bad_input;
    if (bad && field.type == FormField::Type::time_of_day && !TimeOfDay::parse(text.toStdString(), "")) {
        return tr("%1 is no time of day: write it from 00:00 to 23:59, as 09:30.").arg(text);
    }
    const auto typed =
        bad && field.kind ? parse_any(*field.kind, text.toStdString(), "") : Result<AnyQuantity>{error};
    if (typed && !field.about.kept && !in_range(field.about, typed.value().si)) {
        return tr("%1 is beyond what goes here: %2.").arg(text, range(field));
    }
    return QString::fromStdString(error.text());
}

QString FormModel::enter(int row, const QString& text) {
    if (row < 0 || row >= count()) {
        return tr("There is no such line.");
    }
    // A copy: storing it may change the lines, this one among them.
    const FormField field = fields_[static_cast<std::size_t>(row)];
    const auto result = field.set(text.trimmed().toStdString());
    if (!result) {
        return refused(field, text.trimmed(), result.error());
    }
    if (row < count()) {
        emit dataChanged(index(row), index(row));
    }
    emit entered();
    return {};
}

}  // namespace wetfront::ui
