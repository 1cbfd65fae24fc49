// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls

// One press of the journal. What was taken back or is not used is struck out, and says why.
PlainWords {
    required property var modelData  // {text, time, undone, doubt}
    readonly property string why: modelData.undone ? qsTr("undone") : modelData.doubt

    text: why.length > 0 ? Sentence.fill(qsTr("%1  %2 (%3)"), [modelData.time, modelData.text, why]) : Sentence.fill(qsTr("%1  %2"), [modelData.time, modelData.text])
    kind: "small"
    font.strikeout: why.length > 0
    Layout.fillWidth: true
}
