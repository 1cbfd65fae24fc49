// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// The program's own keys for a number with its unit or a time of day, so that no system keyboard covers the field. At the
// side in landscape, at the bottom in portrait. One in each window; a field opens it with ask().
Panel {
    id: pad

    // What the point key types; both marks are taken from a keyboard.
    property string decimalMark: "."

    property string unit
    property var units: []
    property string hint
    property string rangeText
    property string errorText
    property bool mayBeEmpty: false
    property var check: null
    property var accept: null

    // {label, text, unit, units, hint, rangeText, negative, timeOfDay, mayBeEmpty, check, accept}: check(text) says what
    // is wrong or "", accept(text) takes the entry, as typed and with its unit.
    function ask(request: var): void {
        title = request.label;
        unit = request.unit ?? "";
        units = request.units ?? [];
        hint = request.hint ?? "";
        rangeText = request.rangeText ?? "";
        mayBeEmpty = request.mayBeEmpty ?? false;
        check = request.check ?? null;
        accept = request.accept ?? null;
        errorText = "";
        typing.negative = request.negative ?? false;
        typing.timeOfDay = request.timeOfDay ?? false;
        typing.start(request.text ?? "");
        open();
        rest.forceActiveFocus();
    }

    function finish(): void {
        if (!typing.complete && !(typing.empty && mayBeEmpty)) {
            errorText = typing.timeOfDay ? qsTr("Type hours and minutes, for example 09:30.") : qsTr("Type a number.");
            return;
        }
        handOver(typing.empty ? "" : [typing.finished, unit].filter(part => part.length > 0).join(" "));
    }

    function handOver(text: string): void {
        errorText = check && text.length > 0 ? check.call(null, text) : "";
        if (errorText.length > 0)
            return;
        close();
        if (accept)
            accept.call(null, text);
    }

    readonly property bool landscape: roomWidth > roomHeight
    readonly property real roomAbove: landscape ? 0 : side.implicitHeight + grid.rowSpacing
    readonly property real keySize: Theme.padKey(roomWidth - 2 * (padding + Theme.gap), roomHeight - 2 * (padding + Theme.gap) - roomAbove)

    padding: Theme.space
    width: landscape ? Math.min(roomWidth - 2 * Theme.gap, keys.implicitWidth + Theme.mm(80)) : roomWidth - 2 * Theme.gap
    height: landscape ? roomHeight - 2 * Theme.gap : contentHeight + 2 * padding
    x: roomWidth - width - Theme.gap
    y: roomHeight - height - Theme.gap

    PadEntry {
        id: typing
        onTextChanged: pad.errorText = ""
    }

    contentHeight: grid.implicitHeight

    FocusScope {
        anchors.fill: parent

        // Where the keyboard rests: Enter finishes the entry, and presses no button that was used before.
        Item {
            id: rest
            focus: true
            Accessible.ignored: true
        }

        Keys.onPressed: event => {
            event.accepted = true;
            if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
                pad.finish();
            else if (event.key === Qt.Key_Backspace || event.key === Qt.Key_Delete)
                typing.backspace();
            else
                event.accepted = typing.type(event.text);
        }

        GridLayout {
            id: grid
            anchors.fill: parent
            columns: pad.landscape ? 2 : 1
            columnSpacing: Theme.spaceLarge
            rowSpacing: Theme.space

            ColumnLayout {
                id: side
                spacing: Theme.gap
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignTop
                PlainWords {
                    text: pad.title
                    kind: "title"
                    Layout.fillWidth: true
                }
                PlainWords {
                    visible: text.length > 0
                    text: pad.hint
                    soft: true
                    Layout.fillWidth: true
                }
                Rectangle {
                    implicitHeight: Theme.target * 1.4
                    color: Theme.well
                    radius: Theme.radius
                    border.width: Theme.borderStrong
                    border.color: pad.errorText.length > 0 ? Theme.warning : Theme.water
                    Layout.fillWidth: true
                    Accessible.role: Accessible.StaticText
                    Accessible.name: qsTr("entry")
                    Accessible.description: number.text + " " + pad.unit
                    RowLayout {
                        anchors.fill: parent
                        anchors.margins: Theme.gap
                        spacing: Theme.gap
                        Item {
                            Layout.fillWidth: true
                            Layout.fillHeight: true
                            Rectangle {
                                visible: typing.fresh
                                anchors.right: number.right
                                width: number.contentWidth
                                height: parent.height
                                color: Theme.waterTint
                            }
                            PlainWords {
                                id: number
                                anchors.fill: parent
                                text: typing.text
                                kind: "display"
                                fontSizeMode: Text.Fit
                                minimumPixelSize: Theme.fontBody
                                wrapMode: Text.NoWrap
                                horizontalAlignment: Text.AlignRight
                                verticalAlignment: Text.AlignVCenter
                                Accessible.ignored: true
                            }
                        }
                        Rectangle {
                            implicitWidth: Theme.border * 2
                            color: Theme.ink
                            Layout.fillHeight: true
                        }
                        PlainWords {
                            visible: text.length > 0
                            text: pad.unit
                            kind: "heading"
                            font.bold: false
                            Accessible.ignored: true
                        }
                    }
                }
                PlainWords {
                    visible: text.length > 0
                    text: pad.rangeText
                    kind: "small"
                    soft: true
                    Layout.fillWidth: true
                }
                ErrorLine {
                    text: pad.errorText
                    Layout.fillWidth: true
                }
                ChoiceRow {
                    visible: pad.units.length > 1
                    label: qsTr("Unit")
                    model: pad.units.map(unit => ({
                                value: unit,
                                text: unit
                            }))
                    current: pad.unit
                    onChosen: value => {
                        rest.forceActiveFocus();
                        pad.unit = value;
                        pad.errorText = "";
                    }
                    Layout.fillWidth: true
                }
                ActionButton {
                    visible: pad.mayBeEmpty
                    text: qsTr("Leave empty")
                    onClicked: pad.handOver("")
                }
            }
            PadKeys {
                id: keys
                keySize: pad.keySize
                mark: typing.timeOfDay ? ":" : pad.decimalMark
                minusAllowed: typing.negative
                Layout.alignment: pad.landscape ? Qt.AlignRight | Qt.AlignBottom : Qt.AlignHCenter
                onTyped: key => typing.type(key)
                onErased: typing.backspace()
                onCancelled: pad.close()
                onDone: pad.finish()
            }
        }
    }
}
