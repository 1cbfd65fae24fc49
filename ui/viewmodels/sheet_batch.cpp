// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheet_batch.h"

#include "sheet/sheet_file_name.h"

namespace wetfront::ui {

SheetBatch::SheetBatch(const Context& context, const SheetPaper& paper, QObject* parent)
    : QObject{parent}, context_{context}, paper_{paper} {
    turn_.setInterval(0);
    turn_.setSingleShot(true);
    connect(&turn_, &QTimer::timeout, this, &SheetBatch::take_turn);
}

void SheetBatch::begin(Order order) {
    order_ = std::move(order);
    reader_.emplace(context_.store, order_.kind);
    houses_.assign(order_.houses.begin(), order_.houses.end());
    visits_.clear();
    chosen_ = 0;
    reading_ = false;
    files_.clear();
    missing_.clear();
    failure_.reset();
    stopped_ = false;
    running_ = true;
    turn_.start();
    emit progressed();
}

void SheetBatch::take_turn() {
    if (stopped_ || failure_ || (houses_.empty() && visits_.empty())) {
        end();
    } else if (!houses_.empty()) {
        look_into_a_house();
    } else {
        read_on();
    }
}

void SheetBatch::look_into_a_house() {
    const Id house = houses_.front();
    houses_.pop_front();
    const auto visits = visits_chosen(context_.store, house, order_.choice);
    if (visits) {
        visits_.insert(visits_.end(), visits.value().begin(), visits.value().end());
        chosen_ = static_cast<int>(visits_.size());
    } else {
        miss(house, visits.error());
    }
    turn_.start();
    emit progressed();
}

void SheetBatch::read_on() {
    if (!reading_) {
        reader_->begin(visits_.front());
        reading_ = true;
    }
    auto source = reader_->read_on();
    if (!source) {
        miss(visits_.front(), source.error());
        next();
    } else if (source.value()) {
        make(std::move(*source.value()));
    } else {
        turn_.start();
    }
}

/// The other thread gets all it needs with it: of this object it knows nothing.
void SheetBatch::make(SheetSource source) {
    const QString file =
        order_.folder + QLatin1Char('/') + QString::fromStdString(sheet_file_name(source.file, order_.kind));
    const auto work = [source = std::move(source), kind = order_.kind, now = context_.clock.wall_now(),
                       reader = order_.reader, size = order_.size, pdf = paper_.pdf, keep = paper_.keep,
                       file] {
        Made made{{}, {}, file};
        if (source.kept) {
            made.not_kept = keep(QByteArray::fromStdString(*source.kept), file);
            return made;
        }
        const auto bytes = pdf(sheet_content(source, kind, now), reader, size);
        if (bytes) {
            made.not_kept = keep(bytes.value(), file);
        } else {
            made.not_made = bytes.error();
        }
        return made;
    };
    worker_.run(work, [this](const Made& made) { take(made); });
}

void SheetBatch::take(const Made& made) {
    if (made.not_made) {
        miss(visits_.front(), *made.not_made);
    } else if (made.not_kept && made.not_kept->fault == FileFault::other) {
        miss(visits_.front(), not_kept(made.file.toStdString(), *made.not_kept));
    } else if (made.not_kept) {
        failure_ = made.not_kept;  // the next one would fare no better
    } else {
        files_.append(made.file);
    }
    next();
}

void SheetBatch::next() {
    visits_.pop_front();
    reading_ = false;
    turn_.start();
    emit progressed();
}

void SheetBatch::miss(const Id& id, const Error& error) {
    missing_.push_back({QString::fromStdString(id.text), QString::fromStdString(error.text())});
}

void SheetBatch::end() {
    running_ = false;
    reader_.reset();
    emit ended();
}

}  // namespace wetfront::ui
