// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/proof_words.h"

#include <QCoreApplication>

#include "viewmodels/timing_words.h"

namespace wetfront::ui {
namespace {

class ProofWords {
    Q_DECLARE_TR_FUNCTIONS(ProofWords)
};

QString shown(Duration value, const Formatter& formatter) {
    return formatter.text(rounded_to(value, 0.1));
}

// Two figures of an uncertainty are enough (GUM 7.2.6), and more would be read as knowledge.
QString with_uncertainty(Duration value, Duration expanded, const Formatter& formatter) {
    const double step = in_seconds(expanded) >= 10.0 ? 1.0 : 0.1;
    return ProofWords::tr("%1 ± %2").arg(formatter.text(rounded_to(value, step)),
                                         formatter.text(rounded_to(expanded, step)));
}

QString yes_or_no(bool answer) {
    return answer ? ProofWords::tr("yes") : ProofWords::tr("no");
}

QString set_words(const ProofLine& line, const Formatter& formatter) {
    switch (line.what) {
        case ProofQuantity::even_drip:
            return yes_or_no(true);
        case ProofQuantity::dry_patch:
            return yes_or_no(false);
        case ProofQuantity::period:
        case ProofQuantity::on_time:
            if (!line.least) {
                return ProofWords::tr("not entered");
            }
            if (!line.most) {
                return ProofWords::tr("at least %1").arg(shown(*line.least, formatter));
            }
            return *line.least == *line.most
                       ? shown(*line.most, formatter)
                       : ProofWords::tr("%1 to %2")
                             .arg(shown(*line.least, formatter), shown(*line.most, formatter));
        case ProofQuantity::fill:
        case ProofQuantity::drip_return:
            return !line.most ? ProofWords::tr("not known")
                              : with_uncertainty(*line.most, line.expected_expanded.value_or(seconds(0.0)),
                                                 formatter);
        case ProofQuantity::drip_before_stop:
            return line.most ? ProofWords::tr("before %1").arg(shown(*line.most, formatter))
                             : ProofWords::tr("not known");
    }
    return {};
}

QString allowed_words(const ProofLine& line, const Formatter& formatter) {
    switch (line.what) {
        case ProofQuantity::period:
        case ProofQuantity::on_time:
            return line.least ? ProofWords::tr("may differ by %1").arg(shown(line.tolerance, formatter))
                              : QString{};
        case ProofQuantity::fill:
            return line.most
                       ? ProofWords::tr("as timed, at most %1 later").arg(shown(line.tolerance, formatter))
                       : QString{};
        case ProofQuantity::drip_return:
            return line.most ? ProofWords::tr("as worked out, at most %1 later")
                                   .arg(shown(line.tolerance, formatter))
                             : QString{};
        case ProofQuantity::drip_before_stop:
        case ProofQuantity::even_drip:
        case ProofQuantity::dry_patch:
            return {};
    }
    return {};
}

QString seen_words(const ProofLine& line, const Formatter& formatter) {
    if (line.answer) {
        return yes_or_no(*line.answer);
    }
    return line.seen ? with_uncertainty(line.seen->mean, line.seen->expanded, formatter) : QString{};
}

}  // namespace

QString sign_of(ProofVerdict verdict) {
    switch (verdict) {
        case ProofVerdict::pass:
            return QStringLiteral("pass");
        case ProofVerdict::fail:
            return QStringLiteral("fail");
        case ProofVerdict::too_close:
            return QStringLiteral("close");
        case ProofVerdict::not_watched:
        case ProofVerdict::not_compared:
        case ProofVerdict::too_early:
        case ProofVerdict::incomplete:
            return QStringLiteral("open");
    }
    return {};
}

QVariantMap proof_line_map(const ProofLine& line, const Formatter& formatter) {
    const QString what = formatter.text(label_of(line.what));
    const QString set = set_words(line, formatter);
    const QString seen = seen_words(line, formatter);
    const QString word = formatter.text(label_of(line.verdict));
    return {{"what", what},
            {"allowed", allowed_words(line, formatter)},
            {"set", set},
            {"seen", seen},
            {"verdict", sign_of(line.verdict)},
            {"word", word},
            {"spoken", seen.isEmpty()
                           ? ProofWords::tr("%1: expected %2; %3").arg(what, set, word)
                           : ProofWords::tr("%1: expected %2; seen %3; %4").arg(what, set, seen, word)}};
}

}  // namespace wetfront::ui
